package sketch

import (
	"fmt"
	"strings"
)

// width of every drawing, and what is kept free at its sides.
const (
	width  = 360.0
	margin = 10.0
)

// Drawing is one finished figure.
type Drawing struct {
	Title  string // one line: what is shown
	Desc   string // the same as the picture says, in words, for who cannot see it
	Height float64

	name string // distinguishes the ids of several drawings on one page
	defs string
	body string
	text []box // where text stands
	ink  box   // everything
}

// SVG is the drawing alone, to put into a page. It has no size of its own: the
// page gives it one.
func (d *Drawing) SVG() string {
	var b strings.Builder
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %s %s" role="img" aria-labelledby="%s-title %s-desc">`,
		num(width), num(d.Height), d.name, d.name)
	d.write(&b)
	b.WriteString("</svg>\n")
	return b.String()
}

func (d *Drawing) write(b *strings.Builder) {
	fmt.Fprintf(b, "\n<title id=\"%s-title\">%s</title>\n<desc id=\"%s-desc\">%s</desc>\n", d.name, escape(d.Title), d.name, escape(d.Desc))
	if d.defs != "" {
		fmt.Fprintf(b, "<defs>\n%s</defs>\n", d.defs)
	}
	fmt.Fprintf(b, "<rect width=\"%s\" height=\"%s\" fill=\"#fff\"/>\n", num(width), num(d.Height))
	fmt.Fprintf(b, "<g font-family=\"%s\" font-size=\"%s\" fill=\"none\" stroke=\"#111\" stroke-linecap=\"round\" stroke-linejoin=\"round\">\n%s</g>\n",
		fontFamily, num(labelSize), d.body)
}

// sheetStyle keeps a sheet from growing without end on a wide screen, and on
// one page when it is printed.
const sheetStyle = `svg{display:block;margin:0 auto;max-width:40rem;height:auto}@media print{svg{max-width:none;max-height:100vh}}`

// Sheet puts drawings under one another, as a file of its own.
func Sheet(title, desc string, drawings ...*Drawing) string {
	const head = 34.0
	height := head
	for _, d := range drawings {
		height += d.Height
	}
	var b strings.Builder
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" width="100%%" viewBox="0 0 %s %s" role="img" aria-labelledby="sheet-title sheet-desc">`,
		num(width), num(height))
	fmt.Fprintf(&b, "\n<title id=\"sheet-title\">%s</title>\n<desc id=\"sheet-desc\">%s</desc>\n<style>%s</style>\n", escape(title), escape(desc), sheetStyle)
	fmt.Fprintf(&b, "<rect width=\"%s\" height=\"%s\" fill=\"#fff\"/>\n", num(width), num(height))
	fmt.Fprintf(&b, "<text x=\"%s\" y=\"23\" font-family=\"%s\" font-size=\"%s\" font-weight=\"bold\" fill=\"#111\">%s</text>\n",
		num(margin), fontFamily, num(titleSize), escape(shorten(title, titleSize, true, width-2*margin)))
	y := head
	for _, d := range drawings {
		fmt.Fprintf(&b, "<svg y=\"%s\" width=\"%s\" height=\"%s\" viewBox=\"0 0 %s %s\" role=\"img\" aria-labelledby=\"%s-title %s-desc\">",
			num(y), num(width), num(d.Height), num(width), num(d.Height), d.name, d.name)
		d.write(&b)
		b.WriteString("</svg>\n")
		y += d.Height
	}
	b.WriteString("</svg>\n")
	return b.String()
}
