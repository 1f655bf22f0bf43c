// The quilt in grey and line, the piece key, and the sheets to work on, in Typst.
import { chapterTitles } from '#paper/words';

export const sheetsTypst = `
#import "/hand.typ": *

#let captioned(p, words) = block(breakable: false, width: 100%, below: 14pt, {
  align(center, picture(p))
  align(center, block(above: 6pt, text(size: 9pt, fill: soft, words)))
})

// a wide quilt three times below each other, others with the two small ones side by side
#let quiltLooks(looks) = [
  = ${chapterTitles.quilt}
  #block(width: 100%, below: 18pt, align(center, picture(looks.line)))
  #grid(columns: if looks.isWide { (1fr,) } else { (1fr, 1fr) }, column-gutter: gutter, row-gutter: 18pt,
    captioned(looks.grey)[Each cloth in the grey of its own lightness: what reads apart here reads apart in any colours.],
    captioned(looks.hatched)[Each cloth with its hatch, to find your place on a page printed in grey.])
]

#let keyed(p) = {
  set text(size: 9pt)
  set par(leading: 0.5em, spacing: 0.4em)
  par({ strong(p.label); h(6pt); p.cut })
  for c in p.cloths { par(text(fill: soft, c)) }
  par(text(fill: soft, p.count))
}

// pictures stand on one line, their words below it; a row is as high as its tallest piece
#let keyedRow(pieces) = block(breakable: false, above: 0pt, below: 14pt,
  grid(columns: (1fr, 1fr, 1fr, 1fr), column-gutter: 16pt, row-gutter: 6pt,
    ..range(4).map(i => if i < pieces.len() { align(left + bottom, picture(pieces.at(i).picture)) }),
    ..pieces.map(keyed)))

#let pieceKey(blocks, heads) = [
  = ${chapterTitles.pieces}
  Every kind of piece as it is cut, to scale within its block, seam allowance and all. The mark is the one on the cutting pages#if heads.len() > 0 [ of each size: numbers and marks stand for #heads.join(" · ")].
  #for b in blocks {
    block(breakable: b.pieces.len() > 12, width: 100%, above: 18pt, {
      heading(level: 2, b.title)
      for row in b.pieces.chunks(4) { keyedRow(row) }
    })
  }
]

#let swatchPage(cloths) = [
  = ${chapterTitles.swatches}
  A snip of each cloth, glued or pinned beside its letter, settles every doubt at the cutting table.
  #v(6pt)
  #grid(columns: if cloths.len() > 12 { (1fr,) * 4 } else { (1fr,) * 3 }, column-gutter: gutter, row-gutter: 18pt,
    ..cloths.map(c => block(breakable: false, width: 100%, {
      rect(width: 100%, height: 1.25in, stroke: 0.5pt + ink)
      grid(columns: (auto, 1fr), column-gutter: 6pt, align: horizon, picture(c.picture), c.name)
      text(size: 9pt, fill: soft, c.buy)
    })))
]

#let colouring(c) = [
  = ${chapterTitles.colouring}
  #align(center, picture(c.quilt))
  #if c.blocks.len() > 0 [
    #pagebreak()
    #grid(columns: if c.blocks.len() <= 2 { (1fr,) } else { (1fr, 1fr) }, column-gutter: gutter, row-gutter: 20pt,
      ..c.blocks.map(b => block(breakable: false, { text(font: serif, weight: 600, b.title); parbreak(); picture(b.picture) })))
  ]
]

// as high as a thumb, or as its words
#let pieceLabel(l) = layout(room => {
  let words = {
    set par(leading: 0.45em, spacing: 0.45em)
    par({ text(font: serif, weight: 600, size: 16pt, l.mark); h(6pt); text(size: 9.5pt, l.cloth) })
    par(text(size: 9pt, l.cut))
    par(text(size: 8.5pt, fill: soft, l.usedFor))
  }
  block(breakable: false, width: 100%, height: calc.max(54pt, measure(block(width: room.width, words)).height), words)
})

#let labels(sheets) = [
  = ${chapterTitles.labels}
  One for each mark: cut them apart along the lines and pin each to its pile.
  #for s in sheets {
    if s.title != none { heading(level: 2, s.title) } else { v(4pt) }
    grid(columns: (1fr, 1fr, 1fr), stroke: (paint: line, thickness: 0.5pt, dash: "dashed"), inset: 8pt, ..s.labels.map(pieceLabel))
  }
]

#let glossary(terms) = [
  = ${chapterTitles.glossary}
  #if terms.len() == 0 [These pages use no words of the trade that need explaining.]
  #halved(terms, t => 30 + t.word.len() + t.meaning.len(), some => {
    set text(size: 9.5pt)
    for t in some { block(breakable: false, below: 9pt, { strong(t.word); [: ]; t.meaning }) }
  })
]

// short as it mostly is, it goes below what stands before it
#let corrections(facts) = [
  #show heading.where(level: 1): it => block(above: 34pt, below: 12pt, sticky: true, text(size: 24pt, it.body))
  = ${chapterTitles.corrections}
  #if facts.corrections.len() == 0 [
    None are known in this edition. Where a figure and your cloth disagree, measure twice, then trust the cloth.
  ] else {
    ruled(columns: (auto, 1fr), ([Edition], [Put right]), facts.corrections.map(c => (strong(c.edition), c.text)))
  }
]

#let runSheet(s) = [
  #heading(level: 1, "Run sheet: " + s.title)
  #grid(columns: (auto, 1fr), column-gutter: gutter,
    picture(s.board),
    {
      text(weight: 600, s.minutes)
      v(4pt)
      text(fill: soft)[On the table]
      list(..s.table)
    })
  == Sew beforehand
  #if s.stepOuts.len() == 0 [
    Nothing: every step goes on from the unit of the step before, or from pieces.
  ] else [
    #block(sticky: true)[Sewn and pressed, so that every step can be shown without waiting: the class sees each unit sewn once, and these are those that steps take besides. Right: what to cut for them, besides the sets for board and sewing.]
    #grid(columns: (1fr, 1fr), column-gutter: gutter,
      ruled(columns: (auto, auto, 1fr, auto), ([Unit], [Sew], [Shows], [Measures]), s.stepOuts.map(o => (strong(o.unit), o.count, o.shows, o.size))),
      ruled(columns: if s.cut.any(c => c.cloth.clusters().len() > 16) { (auto, 1fr, 1fr, auto) } else { (auto, auto, 1fr, auto) }, ([Piece], [Cloth], [Cut], [Pieces]), s.cut.map(c => (strong(c.label), c.cloth, c.cut, c.count))))
    #s.cloth
  ]
  == In class
  #ruled(columns: (auto, 1fr, auto, 1.3fr, auto), align: left + top, ([Step], [Show], [Measures], [Say], [Min.]),
    s.rows.map(r => (strong(r.number), r.show, r.measure, r.say, r.minutes)))
]

#let handoutHead(h) = [
  #heading(level: 1, h.title)
  #grid(columns: (auto, 1fr), column-gutter: gutter, align: horizon,
    picture(h.quilt),
    grid(columns: (auto, 1fr), column-gutter: 18pt, row-gutter: 8pt,
      ..h.facts.map(f => (text(fill: soft, f.name), f.value)).flatten()))
]

#let colourways(c) = if c != none [
  = ${chapterTitles.colourways}
  The same pattern in other cloths: cut and sew by the letters.
  #v(6pt)
  #grid(columns: (1fr, 1fr, 1fr), column-gutter: gutter, row-gutter: 16pt,
    ..c.pictures.map(p => block(breakable: false, { picture(p.picture); v(-4pt); text(font: serif, weight: 600, p.title) })))
  #v(6pt)
  #ruled(columns: (auto,) + c.pictures.map(_ => 1fr), ([Cloth],) + c.pictures.map(p => p.title),
    c.rows.map(r => (strong(r.letter), ..r.cloths.map(k => grid(columns: (auto, 1fr), column-gutter: 6pt, align: horizon, picture(k.swatch), k.name)))))
]
`;
