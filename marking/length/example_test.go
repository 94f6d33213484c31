package length_test

import (
	"fmt"

	"tuckmark/marking/length"
)

// A fraction is as good as a decimal, and a number alone counts in the unit of the file.
func ExampleParse() {
	for _, written := range []string{"2 1/8", "2⅛", "2.125", "54 mm", `3/8"`, "5,4 cm", "2-1/8"} {
		mm, err := length.Parse(written, length.Inch)
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Printf("%s is %.3f mm\n", written, mm)
	}
	// Output:
	// 2 1/8 is 53.975 mm
	// 2⅛ is 53.975 mm
	// 2.125 is 53.975 mm
	// 54 mm is 54.000 mm
	// 3/8" is 9.525 mm
	// "5,4 cm" is written with a comma
	// hint: write a decimal with a point: "5.4 cm"
	// "2-1/8" joins a whole number and a fraction with a hyphen
	// hint: write them with a space: "2 1/8"
}

// 0               1               2               3 in
// |.......'.......|.......'.......|.......'.......|
//
//	^ 54.4 mm: 2.1417 in, between 2 1/8 and 2 3/16
func ExampleUnit_OnRuler() {
	fmt.Println(length.Inch.OnRuler(54.4))
	fmt.Println(length.Centimetre.OnRuler(54.4))
	fmt.Println(length.Inch.OnRuler(0.5))
	fmt.Println(length.Inch.Amount(54.4).Reading())
	// Output:
	// 2 1/8 in
	// 5.4 cm
	// less than 1/16 in
	// 2 1/8 + 1/64
}

// Four tucks take up what the ruler shows of one, four times.
func ExampleUnit_Amount() {
	one := length.Inch.Amount(10) // 0.394 in, read as 3/8 in
	fmt.Println(one.Both())
	fmt.Println(one.Times(4).Both())
	fmt.Println(one.Times(4).Buy().Both())
	// Output:
	// 3/8 in (10 mm)
	// 1 1/2 in (40 mm)
	// 1/8 yd (0.05 m)
}
