package report

import (
	"bytes"
	"testing"

	"pgregory.net/rapid"
)

// TestJSONWriterIsTheEncoder holds what is appended by hand to what encode makes
// of the same value, byte for byte.
func TestJSONWriterIsTheEncoder(t *testing.T) {
	letters := rapid.RuneFrom([]rune("aZ09 \"\\/<>&'é中🙂\x00\x01\b\f\n\r\t\x1f\x7f\u0080\u00ad\u200b\u2028\u202e\ufeff\ufffd\ufffe\U000e0041"))
	texts := rapid.OneOf(rapid.StringOf(letters), rapid.Map(rapid.SliceOf(rapid.Byte()), func(b []byte) string { return string(b) }))
	values := rapid.OneOf(
		rapid.Map(texts, func(s string) any { return s }),
		rapid.Map(rapid.SliceOf(texts), func(l []string) any { return l }),
		rapid.Map(rapid.Float64(), func(v float64) any { return v }),
		rapid.Map(rapid.Float64Range(-1e-5, 1e-5), func(v float64) any { return v }),
		rapid.Map(rapid.Int(), func(n int) any { return float64(n) }),
		rapid.Map(rapid.Bool(), func(b bool) any { return b }),
		rapid.SampledFrom([]any{nil, []string(nil), 0.0, 1e21, 1e20, 1e-6, 9.99e-7, "", []string{}}),
	)
	rapid.Check(t, func(t *rapid.T) {
		v := values.Draw(t, "value")
		var want, got bytes.Buffer
		if err := encode(&want, v, ""); err != nil {
			t.Fatal(err)
		}
		j := newJSONWriter(&got)
		j.value(v)
		if err := j.close(); err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(got.Bytes(), want.Bytes()) {
			t.Errorf("%q is written %q, not %q", v, got.Bytes(), want.Bytes())
		}
	})
}

// TestJSONWriterSaysWhatFails holds that a number which JSON has no word for is
// an error.
func TestJSONWriterSaysWhatFails(t *testing.T) {
	zero := 0.0
	j := newJSONWriter(&bytes.Buffer{})
	j.number(1 / zero)
	if err := j.close(); err == nil {
		t.Error("infinity was written")
	}
}
