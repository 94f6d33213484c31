package length

import (
	"fmt"
	"strconv"
	"strings"
)

// Rules of this file: 37/8 is a fraction like any other, and counts as one. But who reads a
// ruler writes 4 5/8, so that it is more likely 3 7/8 whose space was lost.

// mostUnspaced is the largest number under the stroke of a fraction that stands on a ruler.
const mostUnspaced = 64

// Unspaced is a fraction in which a space may be missing.
type Unspaced struct {
	Written string   // "37/8"
	Counts  string   // as a mixed number: "4 5/8"
	Meant   []string // with a space: "3 7/8"; of 115/16 both "1 15/16" and "11 5/16"
}

// FindUnspaced looks at a length as it is written, with its sign and its unit if it has
// them; ok is false where no space can be missing. A fraction of a ruler has a power of two
// under its stroke.
func FindUnspaced(s string) (u Unspaced, ok bool) {
	number, _ := splitUnit(strings.TrimSpace(s))
	m := fractionForm().FindStringSubmatch(spelledOut(strings.TrimLeft(number, "-−")))
	if m == nil {
		return u, false
	}
	over, errOver := strconv.Atoi(m[1])
	under, errUnder := strconv.Atoi(m[2])
	if errOver != nil || errUnder != nil || under < 2 || under > mostUnspaced || under&(under-1) != 0 || over < under {
		return u, false
	}
	for at := 1; at < len(m[1]); at++ {
		if rest, _ := strconv.Atoi(m[1][at:]); m[1][0] != '0' && m[1][at] != '0' && rest < under {
			u.Meant = append(u.Meant, m[1][:at]+" "+m[1][at:]+"/"+m[2])
		}
	}
	u.Written, u.Counts = m[0], mixed(float64(over), under)
	return u, u.Meant != nil
}

// String tells what a fraction counts as, and how to write the other.
func (u Unspaced) String() string {
	var quoted []string
	for _, m := range u.Meant {
		quoted = append(quoted, strconv.Quote(m))
	}
	return fmt.Sprintf("%s counts as %s; if a space is missing in it, write %s", u.Written, u.Counts, strings.Join(quoted, " or "))
}
