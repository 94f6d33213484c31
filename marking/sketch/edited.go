package sketch

import "strings"

// Saying is the text of a file in which a table says something of a key: in the place of what
// it says of it, whether on one line or in tables of its own, or besides. The table is called
// as it is written there; "" is the top of the file, and one that the text does not have is
// put at its end.
func Saying(text, table, key, value string) string {
	line := key + " = " + value
	for _, v := range Values(text) {
		if v.Table == table && v.Key == key {
			return v.Line.Put(text, line)
		}
	}
	under := key
	if table != "" {
		under = table + "." + key
	}
	text = without(text, under)
	if table == "" {
		return line + "\n" + text
	}
	for _, one := range Tables(text) {
		if one.Name == table {
			return one.Header.Put(text, one.Header.In(text)+"\n"+line)
		}
	}
	return text + "\n[" + table + "]\n" + line + "\n"
}

// without is the text without a table and those in it.
func without(text, table string) string {
	var left strings.Builder
	at := 0
	for _, one := range Tables(text) {
		if one.Name == table || strings.HasPrefix(one.Name, table+".") {
			left.WriteString(text[at:one.Whole.From])
			at = one.Whole.To
		}
	}
	left.WriteString(text[at:])
	return left.String()
}
