// The hand of the pages in Typst: paper, type, colours, and the few forms that all chapters share.

export const handTypst = `
#let ink = rgb("#24211c")
#let soft = rgb("#6a6458")
#let line = rgb("#d9d2c3")
#let hush = rgb("#ece6d8")
#let thread = rgb("#a13d2b")
// each family stands in for the signs that the other lacks
#let sans = ("Source Sans 3", "Source Serif 4")
#let serif = ("Source Serif 4", "Source Sans 3")
#let wide = 480pt
#let gutter = 20pt

#let picture(p) = image("/pictures/" + p.name + ".svg", width: p.widthPt * 1pt, alt: p.alt)
#let hairline = std.line(length: 100%, stroke: 0.5pt + line)

// a short table is kept on one page: the last row of it does not stand alone on the next
#let ruled(columns: (), align: left + horizon, head, rows) = block(breakable: rows.len() > 12, {
  set text(size: 9.5pt)
  set par(justify: false)
  table(
    columns: columns,
    align: align,
    stroke: (x, y) => (bottom: if y == 0 { 0.75pt + ink } else { 0.5pt + line }),
    inset: (x, y) => (left: if x == 0 { 0pt } else { 5pt }, right: 5pt, top: 4pt, bottom: 4pt),
    table.header(repeat: true, ..head.map(h => text(fill: soft, size: 8.5pt, h))),
    ..rows.flatten(),
  )
})

#let short(words) = {
  let signs = words.clusters()
  if signs.len() > 48 { signs.slice(0, 47).join() + "…" } else { words }
}

// kept on one page where it is no higher than that
#let together(most, body) = context {
  let whole = measure(block(width: wide, body)).height
  block(width: 100%, above: 18pt, breakable: whole > most, body)
}

// two columns of about the same length, read one after the other
#let halved(all, lengthOf, written) = {
  let whole = all.map(lengthOf).sum(default: 0)
  let before = 0
  let left = ()
  let right = ()
  for one in all {
    if before + lengthOf(one) / 2 <= whole / 2 { left.push(one) } else { right.push(one) }
    before += lengthOf(one)
  }
  grid(columns: (1fr, 1fr), column-gutter: gutter, written(left), written(right))
}

#let warned(body) = block(width: 100%, inset: (left: 9pt, y: 3pt), stroke: (left: 2pt + thread), body)

// flowing: chapters follow each other on one page, as the few pages of a handout do
#let hand(title, paper, flowing, body) = {
  let side = if paper == "a4" { (595.276pt - wide) / 2 } else { (612pt - wide) / 2 }
  set text(font: sans, size: 10pt, fill: ink, lang: "en", fallback: false, number-type: "lining")
  set par(leading: 0.6em, spacing: 0.85em, justify: false)
  set list(marker: text(fill: soft)[–], spacing: 0.6em, body-indent: 0.5em)
  set enum(spacing: 0.6em, body-indent: 0.5em, numbering: n => text(fill: soft, str(n)))
  set page(
    paper: paper,
    margin: (x: side, top: 64pt, bottom: 56pt),
    header: context if here().page() > 1 {
      // the chapter that the page begins with, or goes on with
      let all = query(heading.where(level: 1))
      let earlier = all.filter(h => h.location().page() < here().page())
      let atTop = all.filter(h => h.location().page() == here().page() and h.location().position().y < 120pt)
      let named = if atTop.len() > 0 { atTop.first() } else if earlier.len() > 0 { earlier.last() }
      set text(size: 8.5pt, fill: soft)
      grid(columns: (1fr, auto), column-gutter: 16pt,
        short(title),
        if named != none { { let name = named.body; if name.has("text") { short(name.text) } else { name } } })
      v(-5pt)
      hairline
    },
    footer: context if here().page() > 1 {
      set text(size: 8.5pt, fill: soft)
      align(center)[Page #counter(page).display() of #counter(page).final().first()]
    },
  )
  show heading: set text(font: serif, weight: 600)
  show heading.where(level: 1): it => if flowing {
    block(above: 28pt, below: 12pt, sticky: true, text(size: if counter(heading).get().first() == 1 { 24pt } else { 18pt }, it.body))
  } else {
    pagebreak(weak: true)
    block(below: 14pt, text(size: 24pt, it.body))
  }
  show heading.where(level: 2): it => block(above: 18pt, below: 8pt, sticky: true, text(size: 14pt, it.body))
  show heading.where(level: 3): it => block(above: 0pt, below: 4pt, sticky: true, text(size: 10.5pt, it.body))
  body
}
`;
