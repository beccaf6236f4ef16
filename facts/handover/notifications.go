package handover

import (
	"slices"

	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// deriveNotifications works out when and how each authority was notified.
func (f *Connection) deriveNotifications(in *schema.Installation, b book.Book) {
	h, list := in.Handover, in.Handover.Member("notifications")
	service := in.Commissioning.Date
	network, building, scheme := sentTo(h, "network_operator"), sentTo(h, "building_control"), sentTo(h, "certification_scheme")
	approved := answered(network)
	f.Routes = routes(network, h.Notifications == nil, list)
	f.Route = mainRoute(f.Routes, list)
	f.ApplicationDays = days("t", earliest(each(network, func(n *schema.Notification) schema.Text { return n.Applied })), h.StartOfWork, list)
	f.ApprovalDays = days("t", earliest(each(approved, func(n *schema.Notification) schema.Text { return n.Approved })), h.StartOfWork, list)
	f.ApprovalLeft = days("t", service, latest(each(approved, func(n *schema.Notification) schema.Text { return n.ApprovalUntil })), list)
	f.ApprovedW = approvedPower(approved, list)
	f.NoticeDays = days("t", service, earliest(each(ofService(network), notified)), list)
	f.BuildingNotices = working.Counted("n", len(building), list)
	if h.Notifications == nil {
		f.BuildingNotices = working.Unknown("n", "", list)
	}
	f.BuildingRoutes = routes(building, h.Notifications == nil, list)
	f.BuildingDays = days("t", h.EndOfWork, earliest(each(byRoute(building, "competent_person_scheme"), notified)), list)
	f.BuildingBefore = days("t", earliest(each(byRoute(building, "building_notice"), notified)), h.StartOfWork, list)
	f.RegisterDays = workingDays("t", service, earliest(each(scheme, notified)), list, b)
}

func notified(n *schema.Notification) schema.Text { return n.Notified }

func sentTo(h schema.Handover, who string) []*schema.Notification {
	var some []*schema.Notification
	for i := range h.Notifications {
		if n := &h.Notifications[i]; n.To.Is(who) {
			some = append(some, n)
		}
	}
	return some
}

// byRoute are the notifications that took one route.
func byRoute(all []*schema.Notification, route string) []*schema.Notification {
	var some []*schema.Notification
	for _, n := range all {
		if n.Route.Is(route) {
			some = append(some, n)
		}
	}
	return some
}

// answered are the notifications to which a yes came back.
func answered(all []*schema.Notification) []*schema.Notification {
	var some []*schema.Notification
	for _, n := range all {
		if n.Answer.Is("accepted") || n.Answer.Is("accepted_with_conditions") {
			some = append(some, n)
		}
	}
	return some
}

// ofService are the notifications that state the day of going into service.
func ofService(all []*schema.Notification) []*schema.Notification {
	var some []*schema.Notification
	for _, n := range all {
		if n.Commissioned.Stated() {
			some = append(some, n)
		}
	}
	return some
}

func each(all []*schema.Notification, of func(*schema.Notification) schema.Text) []schema.Text {
	dates := make([]schema.Text, len(all))
	for i, n := range all {
		dates[i] = of(n)
	}
	return dates
}

// routes lists the notification routes used. One notification that does not say its
// route leaves the list unknown: it may be the one looked for.
func routes(all []*schema.Notification, unstated bool, list string) working.Names {
	if unstated {
		return working.UnknownList(list)
	}
	var used, missing []string
	for _, n := range all {
		if !n.Route.Stated() {
			missing = append(missing, n.Route.At())
		}
		used = append(used, n.Route.Value)
	}
	if missing != nil {
		return working.UnknownList(missing...)
	}
	return working.List(used...)
}

// mainRoute is the route among those used that requires most of the network operator.
func mainRoute(used working.Names, list string) working.Text {
	if !used.Known() {
		return working.UnknownText(used.Missing()...)
	}
	for _, route := range []string{"apply_before", "fast_track", "multiple_premises", "connect_and_notify"} {
		if slices.Contains(used.Values(), route) {
			return working.KnownText(route, list)
		}
	}
	return working.UnknownText(list)
}

// approvedPower is the greatest power approved.
func approvedPower(approved []*schema.Notification, list string) working.Number {
	var powers []working.Number
	for _, n := range approved {
		if n.ApprovedPowerW.Stated() {
			powers = append(powers, working.Stated("P_app", "W", n.ApprovedPowerW))
		}
	}
	if powers == nil {
		return working.Unknown("P_app", "W", list)
	}
	return working.Greatest("P_app", "W", powers...)
}
