package sheets

import (
	"strings"
	"testing"

	"sunclause/schema"
)

// TestStickers holds how a label is printed against what its document states.
func TestStickers(t *testing.T) {
	for _, c := range []struct {
		name, label string
		want        sticker
	}{
		{"nothing stated", `"text": "Solar PV"`, sticker{Ground: "#fff", Ink: "#000", Width: 100, Height: 60, Letter: 5, Fits: true}},
		{"capitals", `"text": "Solar PV", "letter_height_mm": 6, "small_letter_height_mm": 4`, sticker{Ground: "#fff", Ink: "#000", Width: 100, Height: 60, Letter: 6, Fits: true}},
		{"small letters, three quarters of capitals", `"text": "Solar PV", "small_letter_height_mm": 3`, sticker{Ground: "#fff", Ink: "#000", Width: 100, Height: 60, Letter: 4, Fits: true}},
		{"no room at the stated height", `"text": "Do not disconnect d.c. plugs and sockets under load", "width_mm": 50, "height_mm": 15, "letter_height_mm": 4`, sticker{Ground: "#fff", Ink: "#000", Width: 50, Height: 15, Letter: 4}},
		{"as large as there is room for", `"text": "Solar PV d.c. cable", "width_mm": 50, "height_mm": 15`, sticker{Ground: "#fff", Ink: "#000", Width: 50, Height: 15, Letter: 3, Fits: true}},
		{"broad letters", `"text": "` + strings.Repeat("W", 19) + `"`, sticker{Ground: "#fff", Ink: "#000", Width: 100, Height: 60, Letter: 3, Fits: true}},
		{"dark ground", `"text": "x", "background": "black"`, sticker{Ground: "#000", Ink: "#fff", Width: 100, Height: 60, Letter: 5, Fits: true}},
		{"red on white", `"text": "x", "background": "white", "lettering": "red"`, sticker{Ground: "#fff", Ink: "#b3140c", Width: 100, Height: 60, Letter: 5, Fits: true}},
		{"a colour that is none", `"text": "x", "background": "green_yellow", "lettering": "other"`, sticker{Ground: "#fff", Ink: "#000", Width: 100, Height: 60, Letter: 5, Fits: true}},
	} {
		text := `{"project": {"reference": "X", "stage": "design", "country": "GB"}, "labels": [{"id": "L", "legend": "dc_isolator", "location": "origin", ` + c.label + `}]}`
		doc, err := schema.Decode("x.json", []byte(text))
		if err != nil {
			t.Fatalf("%s: %v", c.name, err)
		}
		got := stickerOf(doc.Installation.Labels[0])
		got.ID, got.Words = "", ""
		if got != c.want {
			t.Errorf("%s:\n%+v\nwant\n%+v", c.name, got, c.want)
		}
	}
	for _, pair := range [][2]string{{"#fff", "#000"}, {"#000", "#000"}} {
		if plain := (sticker{Ground: pair[0], Ink: pair[1]}).Plain(); plain == (pair[0] == pair[1]) {
			t.Errorf("%s on %s can be read: %t", pair[1], pair[0], plain)
		}
	}
}
