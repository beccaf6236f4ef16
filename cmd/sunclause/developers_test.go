package main

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// TestDevelopersPage holds the lists of DEVELOPERS.md to the repository: the rooms,
// the doors, the lines of the house, and each file and folder that the page names.
func TestDevelopersPage(t *testing.T) {
	raw, err := os.ReadFile("../../DEVELOPERS.md")
	if err != nil {
		t.Fatal(err)
	}
	page := string(raw)
	for what, lists := range map[string]func(string) (listed, there []string){
		"rooms": roomsNamed, "doors": doorsNamed, "house": houseNamed,
	} {
		listed, there := lists(page)
		if len(there) == 0 {
			t.Errorf("%s: nothing found", what)
		}
		for _, name := range there {
			if !slices.Contains(listed, name) {
				t.Errorf("%s: the page does not name %s", what, name)
			}
		}
		for _, name := range listed {
			if !slices.Contains(there, name) {
				t.Errorf("%s: the page names %s, which is not there", what, name)
			}
		}
	}
	for _, name := range namedPath.FindAllString(page, -1) {
		if strings.ContainsAny(name, "<>*") || strings.Contains(name, "NAME") {
			continue
		}
		if _, err := os.Stat("../../" + strings.TrimSuffix(name, "/")); err != nil {
			t.Errorf("the page names %s, which is not there", name)
		}
	}
}

var (
	roomsLine = regexp.MustCompile("(?s)have the same word on every floor: `([a-z\\s]+)`")
	doorsLine = regexp.MustCompile("(?m)^Doors: `(.*)`,$")
	houseLine = regexp.MustCompile(`(?m)^    ([a-z<>/-]+/) `)
	namedPath = regexp.MustCompile(`\b(?:cmd|schema|facts|policies|engine|testdata|docs)/[A-Za-z0-9_<>*./-]*[A-Za-z0-9_<>*/]`)
)

// roomsNamed are the rooms of the page, and the folders of facts that have a schema of
// the same name.
func roomsNamed(page string) (listed, there []string) {
	if m := roomsLine.FindStringSubmatch(page); m != nil {
		listed = strings.Fields(m[1])
	}
	folders, _ := os.ReadDir("../../facts")
	for _, folder := range folders {
		room := folder.Name()
		if _, err := os.Stat("../../schema/" + room + ".schema.json"); err == nil {
			there = append(there, room)
		}
	}
	return listed, there
}

// doorsNamed are the packages in the line of doors, and those in the table of TestDoors
// that are no commands and no tools.
func doorsNamed(page string) (listed, there []string) {
	if m := doorsLine.FindStringSubmatch(page); m != nil {
		for _, step := range strings.Split(m[1], " ← ") {
			for _, name := range strings.Split(step, ", ") {
				listed = append(listed, strings.NewReplacer("<room>", "*").Replace(name))
			}
		}
	}
	for name := range doors {
		switch {
		case name == "cmd/sunclause":
			there = append(there, "cmd")
		case strings.HasPrefix(name, "schema/"), strings.HasPrefix(name, "policies"), name == "facts/facttest":
		default:
			there = append(there, name)
		}
	}
	return listed, there
}

// houseNamed are the folders in the house of the page, and those with Go files or other
// content of ours; a room stands for all.
func houseNamed(page string) (listed, there []string) {
	for _, m := range houseLine.FindAllStringSubmatch(page, -1) {
		listed = append(listed, strings.TrimSuffix(m[1], "/"))
	}
	rooms, _ := roomsNamed(page)
	_ = filepath.WalkDir("../..", func(path string, d fs.DirEntry, err error) error {
		name := strings.TrimPrefix(path, "../../")
		switch {
		case err != nil || !d.IsDir() || path == "../..":
			return err
		case strings.HasPrefix(name, ".") || d.Name() == "testdata" && name != "testdata":
			return fs.SkipDir
		case strings.HasPrefix(name, "testdata/") || strings.HasPrefix(name, "docs/") || strings.HasPrefix(name, "policies/"):
			return fs.SkipDir
		}
		if files, _ := filepath.Glob(path + "/*.go"); len(files) > 0 || !strings.Contains(name, "/") && name != "cmd" && name != "engine" {
			if room, ok := strings.CutPrefix(name, "facts/"); ok && slices.Contains(rooms, room) {
				name = "facts/<room>"
			}
			if !strings.HasSuffix(name, "/write") && name != "facts" && !slices.Contains(there, name) {
				there = append(there, name)
			}
		}
		return nil
	})
	return listed, there
}
