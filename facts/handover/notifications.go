package handover

import (
	"slices"

	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// notifications are some of those of the document.
type notifications []*schema.Notification

func (all notifications) where(is func(*schema.Notification) bool) (some notifications) {
	for _, n := range all {
		if is(n) {
			some = append(some, n)
		}
	}
	return some
}

func (all notifications) sentTo(who string) notifications {
	return all.where(func(n *schema.Notification) bool { return n.To.Is(who) })
}

func (all notifications) byRoute(route string) notifications {
	return all.where(func(n *schema.Notification) bool { return n.Route.Is(route) })
}

// accepted are those to which a yes came back.
func (all notifications) accepted() notifications {
	return all.where(func(n *schema.Notification) bool {
		return n.Answer.Is("accepted") || n.Answer.Is("accepted_with_conditions")
	})
}

// ofService are the notices of going into service: those that state its day, and of
// these not the application that came before the work where there are others.
func (all notifications) ofService() notifications {
	stating := all.where(func(n *schema.Notification) bool { return n.Commissioned.Stated() && !n.Route.Is("decommissioning") })
	if notices := stating.where(func(n *schema.Notification) bool { return !n.Applied.Stated() }); notices != nil {
		return notices
	}
	return stating
}

func (all notifications) dates(of func(*schema.Notification) schema.Text) []schema.Text {
	dates := make([]schema.Text, len(all))
	for i, n := range all {
		dates[i] = of(n)
	}
	return dates
}

// The dates of a notification.
func applied(n *schema.Notification) schema.Text       { return n.Applied }
func approved(n *schema.Notification) schema.Text      { return n.Approved }
func approvalUntil(n *schema.Notification) schema.Text { return n.ApprovalUntil }
func notified(n *schema.Notification) schema.Text      { return n.Notified }

// deriveNotifications works out when and how each authority was notified.
func (f *Connection) deriveNotifications(in *schema.Installation, b book.Book) {
	h, list, service := in.Handover, in.Handover.Member("notifications"), in.Commissioning.Date
	var all notifications
	for i := range h.Notifications {
		all = append(all, &h.Notifications[i])
	}
	network, building, scheme := all.sentTo("network_operator"), all.sentTo("building_control"), all.sentTo("certification_scheme")
	f.Routes = routes(network, h.Notifications == nil, list)
	f.Route = mainRoute(f.Routes, list)
	f.ApplicationDays = days("t", earliest(network.dates(applied)), h.StartOfWork, list)
	f.ApprovalDays = days("t", earliest(network.accepted().dates(approved)), h.StartOfWork, list)
	f.ApprovalLeft = days("t", service, latest(network.accepted().dates(approvalUntil)), list)
	f.ApprovedW = greatest("P_app", network.accepted(), func(n *schema.Notification) schema.Number { return n.ApprovedPowerW }, list)
	f.ApprovedExportW = greatest("P_exp", network.accepted(), func(n *schema.Notification) schema.Number { return n.ApprovedExportW }, list)
	f.NoticeDays = days("t", service, lastOf(network.ofService().dates(notified)), list)
	f.BuildingNotices = working.Counted("n", len(building), list)
	if h.Notifications == nil {
		f.BuildingNotices = working.Unknown("n", "", list)
	}
	f.BuildingRoutes = routes(building, h.Notifications == nil, list)
	f.BuildingDays = days("t", h.EndOfWork, lastOf(building.byRoute("competent_person_scheme").dates(notified)), list)
	f.BuildingBefore = days("t", earliest(building.byRoute("building_notice").dates(notified)), h.StartOfWork, list)
	f.RegisterDays = workingDays("t", service, lastOf(scheme.dates(notified)), list, b)
}

// routes lists the notification routes used. One notification that does not say its
// route leaves the list unknown: it may be the one looked for.
func routes(all notifications, unstated bool, list string) working.Names {
	if unstated {
		return working.UnknownList(list)
	}
	var used []string
	var missing []working.Gap
	for _, n := range all {
		if !n.Route.Stated() {
			missing = append(missing, working.Unstated(n.Route.At()))
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

// greatest is the greatest power of those that some notifications state.
func greatest(symbol string, of notifications, power func(*schema.Notification) schema.Number, list string) working.Number {
	var powers []working.Number
	for _, n := range of {
		if power(n).Stated() {
			powers = append(powers, working.Stated(symbol, "W", power(n)))
		}
	}
	if powers == nil {
		return working.Unknown(symbol, "W", list)
	}
	return working.Greatest(symbol, "W", powers...)
}
