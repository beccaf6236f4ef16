package policies_test

// badly is an installation with a battery and surge protection of which next to
// nothing is right.
const badly = `{
"project":{"reference":"X","stage":"as_built","country":"GB","premises":"dwelling","design_date":"2026-01-01"},
"site":{"lightning_ng_per_km2_yr":2.5,"temp_min_c":-10,"temp_max_c":30},
"datasheets":{
 "modules":{"M":{"technology":"mono_si","pmax_w":540,"voc_v":49.5,"isc_a":13.9,"vmp_v":41.2,"imp_a":13.1,"voc_coeff_pct_per_k":-0.25,"bifacial":false}},
 "inverters":{"H":{"kind":"hybrid","dc_voltage_max_v":600,"dc_impulse_withstand_kv":1,"mppts":[{},{}],"ac_power_rated_w":5000,"phases":1,"battery_voltage_max_v":200,"battery_current_max_a":100,"backup_output":true}},
 "spds":{"D":{"type":"T1","system":"ac","standard":"61643-11","ucpv_v":100,"ucpv_to_earth_v":100,"iscpv_a":1,"up_kv":4,"in_ka":1,"iimp_ka":1,"isccr_ka":1,"backup_device_max_a":1,"uc_v":100,"status_indicator":false},
  "A":{"type":"T3","system":"pv_dc","standard":"61643-31","up_kv":4,"in_ka":1,"isccr_ka":1,"backup_device_max_a":1,"uc_v":100,"status_indicator":false}},
 "batteries":{"B":{"chemistry":"lead_acid_vented","energy_kwh":45,"voltage_max_v":260,"charge_current_max_a":60,"discharge_current_max_a":60,"short_circuit_ka":9,"coupling":"dc","standard":"none","isolator_built_in":false,"overcurrent_built_in":false,"backup_output":true,"ambient_min_c":10,"ambient_max_c":20,"outdoor_use":false,"indoor_use":false,"clearance_top_mm":200}},
 "switch_disconnectors":{"S":{"poles":2,"ratings":[{"utilization_category":"DC-22A","poles_in_series":1,"ue_v":220,"ie_a":10}]}},
 "protective_devices":{"F":{"kind":"fuse","rated_a":20,"voltage_dc_v":50,"breaking_capacity_dc_ka":1}}},
"strings":[{"id":"S1","module":"M","modules_in_series":10},{"id":"S2","module":"M","modules_in_series":10}],
"inverters":[{"id":"INV1","datasheet":"H","battery_fitted":false}],
"isolators":[{"id":"Q1","circuit":"battery_dc","datasheet":"S","utilization_category":"DC-22A","poles_in_series":1,"ways":[{"id":"1","conductors_opened":"positive"}]}],
"cables":[{"id":"R1","from":"BAT","to":"Q1.1.in","service":"battery"},{"id":"R2","from":"Q1.1.out","to":"INV1.battery","service":"battery"},
 {"id":"R3","from":"S1","to":"INV1.1","service":"pv_string","segments":[{"length_m":60}]},{"id":"R4","from":"S2","to":"INV1.2","service":"pv_string","segments":[{"length_m":30}]},
 {"id":"R5","from":"INV1.ac","to":"B1.1","service":"ac","segments":[{"length_m":30}]},{"id":"R6","from":"SUP","to":"B1.in","service":"ac"}],
"storage":{"batteries":[{"id":"BAT","datasheet":"B","units":2,"units_joined":"parallel","place":"bedroom","detached_building":false,"fire_separation_min":0,"isolator":"Q1","isolator_in_sight":false,"overcurrent_device":"F","clearances_kept":false,"clear_above_mm":100,
  "opens_into_bedroom":true,"in_escape_route":true,"in_protected_route":true,"outdoors_practicable":true,"distance_to_flammables_m":1,"wall_to_habitable_room":true,"fire_detection":"none","second_life":true,"ventilated":false,"terminals_shrouded":false,"ambient_min_c":5,"ambient_max_c":30}],
  "provision":{"planned":true,"place":"roof_space","space_kept":false,"cable_route_kept":false,"coupling":"ac","way":"B1.1","notified":false,"inverter":"INV1"}},
"ac":{"supply":{"id":"SUP","voltage_v":230,"prospective_fault_ka":16},"boards":[{"id":"B1","role":"sub","ways":[{"id":"1","serves":"pv_supply","device":"F"}]}],
 "overvoltage_risk":{"danger_to_life":false,"safety_service":false,"significant_loss":true,"declined_by_owner":true}},
"earthing":{"lightning_protection":{"fitted":true,"separation_kept":true}},
"spds":[{"id":"P1","connected_at":"INV1.1","datasheet":"D","circuit":"pv_dc","modes":"poles_to_earth","live_leads_mm":900,"earth_lead_mm":900,"live_leads_mm2":1,"earth_lead_mm2":1,"indicator_visible":false,"can_be_withdrawn":false,"status_good":false},
 {"id":"P2","connected_at":"B1.1","datasheet":"A","circuit":"ac","live_leads_mm":900,"earth_lead_mm":900,"live_leads_mm2":1,"earth_lead_mm2":1,"indicator_visible":false,"can_be_withdrawn":false,"status_good":false}],
"commissioning":{"functional":[{"id":"T1","test":"source_isolation","passed":false},{"id":"T2","test":"backup_neutral_earth","passed":false}]},
"handover":{"decisions":[{"id":"D1","decision":"surge_protection_declined","in_writing":false}]}}`
