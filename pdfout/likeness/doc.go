// Package likeness holds pictures that are kept against what is drawn now, for the tests of the
// rooms that draw; they alone use it. Two pictures are alike when a reader sees no difference,
// who neither counts dots nor minds which program drew them. It knows nothing of pages, and
// takes any picture of about 60 dots to the inch; which are kept, and how they come about, the
// tests say.
//
//	kept.go    a picture in its file: kept anew, and held against another
//	apart.go   how much two pictures differ, and where
//	colours.go a picture in few colours, so that its file is small
package likeness
