// Cutting, blocks, top, finishing, templates and cautions in Typst.
import { chapterTitles } from '#paper/words';

export const chaptersTypst = `
#import "/hand.typ": *

#let directed(d) = {
  for l in d.before { par(l) }
  for cut in d.cuts {
    block(above: 10pt, below: 6pt, sticky: true, strong(cut.lead))
    for s in cut.strips {
      // a strip's cuts stay together, unless they are many: then the line that leads them stays with the first, and the last does not stand alone
      block(above: 6pt, below: 6pt, breakable: s.cuts.len() > 8, {
        block(below: 5pt, sticky: s.cuts.len() > 0, grid(columns: (16pt, 1fr), text(fill: soft, s.number), s.text))
        for (i, c) in s.cuts.enumerate() {
          block(above: 5pt, below: 5pt, sticky: i == s.cuts.len() - 2, inset: (left: 16pt), grid(columns: (24pt, 1fr), text(fill: soft, c.number), c.text))
        }
      })
    }
  }
  if d.apart.len() > 0 { block(above: 9pt, list(..d.apart)) }
  set text(size: 9pt)
  block(breakable: false, above: 10pt, {
    par({ if d.kept != "" [Worth keeping: #d.kept. ]; text(fill: soft)[In all: #d.effort.] })
    if d.easier.len() > 0 { block(above: 5pt, { text(fill: soft)[What less work would cost:]; list(..d.easier.map(e => text(fill: soft, e))) }) }
  })
}

// what is cut, the cloth laid out, and how it is cut: the layout stands below its list, a narrow one beside the directions.
// A chart no higher than \`most\` is kept on one page; of a higher one the list with the layout.
#let chart(c, most) = context {
  let isNarrow = c.layouts.len() == 1 and c.layouts.first().widthPt <= 200
  let list = {
    heading(level: 2, {box(baseline: 4pt, picture(c.picture)); h(7pt); c.name; h(1fr); text(font: sans, size: 10pt, weight: 400, fill: soft, c.buy)})
    block(breakable: c.pieces.len() > 14, ruled(columns: (auto, auto, auto, auto, 1fr), ([Mark], [Cut], [Size, across × along], [Shape], [For]),
      c.pieces.map(p => (strong(p.mark), p.count, p.size, p.shape, p.usedFor))))
  }
  let laid(p) = block(above: 12pt, below: 12pt, breakable: false, picture(p))
  // narrow pictures that follow stand side by side, as many as the page is wide for
  let inRows = c.layouts.slice(1).fold((), (rows, p) => {
    let isRoom = rows.len() > 0 and rows.last().map(q => q.widthPt * 1pt + gutter).sum() + p.widthPt * 1pt <= wide
    if isRoom { rows.slice(0, -1) + ((..rows.last(), p),) } else { rows + ((p,),) }
  })
  let laidInRow(row) = block(above: 12pt, below: 12pt, breakable: false, stack(dir: ltr, spacing: gutter, ..row.map(picture)))
  let head = list + if not isNarrow { c.layouts.slice(0, 1).map(laid).join() }
  let rest = if isNarrow {
    block(above: 12pt, grid(columns: (1fr, auto), column-gutter: gutter, directed(c.directions), picture(c.layouts.first())))
  } else {
    inRows.map(laidInRow).join()
    directed(c.directions)
  }
  let highOf(body) = measure(block(width: wide, body)).height
  if highOf(head + rest) <= most { block(width: 100%, above: 20pt, breakable: false, head + rest) } else {
    block(width: 100%, above: 20pt, breakable: highOf(head) > 620pt, head)
    rest
  }
}

// most: the height up to which the chart of a cloth is kept on one page; were it more, pages would stay half white
// across: which way strips are cut apart; told with all that is said of cutting, once, before the first of several sizes
#let cutting(name, charts, most: 400pt, lesson: false, across: none) = [
  #heading(level: 1, name)
  #if lesson { par[For the blocks of this lesson alone: its amounts and marks are its own, and differ from those of the whole pattern.] }
  #if across != none { par({
    let parts = [lay it as drawn, and cut across it #across: that is to sub-cut. A part is a length of a strip that is cut again.]
    let turned = if charts.any(c => c.isTurned) [; where a piece is cut turned, the directions give its size as it lies]
    if charts.any(c => not c.inSheets) {
      [Press the cloth, fold it selvage to selvage so that the fold hangs straight, and cut one end square to the fold. A strip is cut from selvage to selvage; cut its selvages off, #parts Sizes are across the cloth, then along its selvages#turned.]
      if charts.any(c => c.inSheets) [ Of a sheet, square up a corner first; its strips are cut from side to side.]
    } else [Press each sheet, and square up a corner of it. A strip is cut across the sheet from side to side; #parts Sizes are across the sheet, then along it#turned.]
  }) }
  #if across != none { par[Cut in the order given: long and wide pieces first. Measure twice; keep pieces of one mark together with their mark.] }
  #for c in charts { chart(c, most) }
]

#let card(s) = block(breakable: false, width: 100%, stroke: (top: 0.75pt + ink), inset: (top: 6pt, bottom: 2pt), {
  grid(columns: (auto, 1fr, auto), column-gutter: 6pt,
    text(font: serif, weight: 600, size: 12pt, fill: thread, s.number),
    heading(level: 3, outlined: false, s.heading),
    text(size: 9pt, weight: 600, s.make))
  v(-4pt)
  grid(columns: (auto, auto), column-gutter: 8pt, picture(s.board), picture(s.machineView))
  v(-4pt)
  set text(size: 9pt)
  set par(leading: 0.5em, spacing: 0.5em)
  par(text(fill: soft, s.machine))
  if "back" in s {
    grid(columns: (1fr, auto), column-gutter: 8pt, par[#s.press #strong(s.measures)], picture(s.back))
  } else {
    par[#s.press #strong(s.measures)]
  }
})

// two abreast; the last two rows stay together, so that no step stands alone on a page
#let cards(steps) = {
  let rows = steps.chunks(2).map(two => block(above: 7pt, below: 7pt, grid(columns: (1fr, 1fr), column-gutter: gutter, ..two.map(card))))
  let first = calc.max(0, rows.len() - 2)
  for row in rows.slice(0, first) { row }
  block(breakable: false, above: 7pt, for row in rows.slice(first) { row })
}

#let blockPages(b, heads) = [
  #heading(level: 1, b.title)
  // how steps are read stands where there is room for it: beside the board, under a short table
  #let isShort = b.pieces.len() <= 6 and b.steps.len() > 0
  #let reading = { set par(leading: 0.5em); text(size: 9pt, fill: soft, b.reading) }
  #grid(columns: (auto, 1fr), column-gutter: gutter,
    picture(b.board),
    {
      text(size: 12pt, weight: 600, b.make)
      linebreak()
      text(fill: soft, b.size)
      if heads.len() > 0 { linebreak(); text(size: 9pt, fill: soft)[Numbers stand for: #heads.join(" · ").] }
      v(4pt)
      ruled(columns: if b.pieces.any(p => p.cloth.len() > 16) { (auto, 1fr, auto, 1fr) } else { (auto, auto, auto, 1fr) }, ([Piece], [Cloth], [Pieces], [Cut]),
        b.pieces.map(p => (strong(p.label), p.cloth, p.count, p.cut)))
      if isShort { block(above: 10pt, reading) }
    })
  #if b.warning != none { warned(b.warning) }
  #for r in b.remarks { par(text(size: 9pt, fill: soft, r)) }
  #if b.steps.len() > 0 [
    == Steps
    #if not isShort { block(below: 10pt, sticky: true, reading) }
    #cards(b.steps)
  ]
]

// one line of pictures after another, a round together where it can be
#let chains(c) = if c != none [
  = ${chapterTitles.chains}
  With the whole quilt cut, the same unit is sewn for all of its blocks in one chain. Sew all chains of a round without cutting the thread between the pieces; then snip them apart, press them, measure one of each, and go on with the next round. The picture shows one block of those that take the unit; where a block has it turned, it is the same unit.
  #for r in c.rounds {
    block(sticky: true, above: 16pt, below: 4pt, heading(level: 2, { r.title; h(1fr); text(font: sans, size: 9pt, weight: 400, fill: soft, r.sum) }))
    // a chain that has no neighbour takes the whole line
    let told(b) = block(width: 100%, stroke: (top: 0.5pt + line), inset: (top: 5pt, bottom: 3pt),
      grid(columns: (18pt, 112pt, 1fr), column-gutter: 6pt,
        text(font: serif, weight: 600, size: 12pt, fill: thread, b.number),
        picture(b.picture),
        {
          set par(leading: 0.5em, spacing: 0.5em)
          set text(size: 9pt)
          par(strong[Make #b.make.])
          for m in b.members { par(m) }
          par({ text(fill: soft, b.press); [ ]; strong(b.measures) })
        }))
    for two in r.batches.chunks(2) {
      block(breakable: false, above: 0pt, below: 0pt, grid(columns: two.len() * (1fr,), column-gutter: gutter, ..two.map(told)))
    }
  }
]

#let top(name, t) = {
  [
    #heading(level: 1, name)
    #for p in t.intro { par(p) }
    #align(center, picture(t.picture))
    #for p in t.parts { together(620pt)[
      == #p.heading
      #for l in p.lead { if p.list.len() > 0 or p.picture != none { par(l) } else { block(sticky: true, l) } }
      #if p.list.len() > 0 { list(..p.list) }
      #if p.picture != none { align(center, block(above: 12pt, below: 12pt, picture(p.picture))) }
      #if p.table != none {
        ruled(columns: p.table.shares.map(s => if s == 0 { auto } else { s * 1fr }), p.table.head, p.table.rows.map(r => (strong(r.at(0)), ..r.slice(1))))
      }
    ] }
  ]
}

// a narrow picture stands to the right of its words, a wide one below them
#let part(p) = {
  heading(level: 2, p.heading)
  let words = for l in p.lines { par(l) }
  if "picture" not in p { words
  } else if p.picture.widthPt <= 200 {
    grid(columns: (1fr, auto), column-gutter: gutter, words, picture(p.picture))
  } else {
    words
    block(above: 10pt, below: 10pt, picture(p.picture))
  }
}

// the last, often two lines long, stays with the one before it
#let parts(name, all) = [
  #heading(level: 1, name)
  #let written(p) = if "picture" in p { block(breakable: false, above: 18pt, part(p)) } else { part(p) }
  #let first = calc.max(0, all.len() - 2)
  #for p in all.slice(0, first) { written(p) }
  #together(400pt, for p in all.slice(first) { written(p) })
]

// all cautions in little room, for a handout
#let cautionsInBrief(all) = block(breakable: false, above: 28pt)[
  #heading(level: 1, "${chapterTitles.cautions}")
  #set text(size: 9pt)
  #set par(leading: 0.5em, spacing: 0.6em)
  #show heading.where(level: 2): it => block(above: 0pt, below: 4pt, text(size: 10.5pt, it.body))
  #halved(all, p => 40 + p.lines.map(l => l.len()).sum(), some => for p in some {
    block(breakable: false, below: 9pt, { heading(level: 2, p.heading); for l in p.lines { par(l) } })
  })
]

#let checkSquare(size, words) = block(breakable: false, stack(dir: ltr, spacing: 8pt,
  rect(width: size, height: size, stroke: 0.5pt + ink), align(horizon, text(size: 9pt, words))))

#let trueScale = [
  Print at 100 %, not fitted to the page. Measure both squares before you cut: if they are off, so is all else.
  #grid(columns: (auto, auto), column-gutter: 30pt, checkSquare(1in, [1 in]), checkSquare(2.5cm, [2.5 cm]))
]

// one line high, so that the room below it is known
#let sheetHeading(s) = heading(level: 2, { short(s.title); if s.sheet != "" { [ ]; h(1fr); text(font: sans, size: 9pt, weight: 400, fill: soft, s.sheet) } })

#let seamTest(t) = [
  = ${chapterTitles['seam-test']}
  Ten minutes before the first seam: three strips say whether yours take what the cut sizes allow for.
  #trueScale
  #grid(columns: (auto, 1fr), column-gutter: gutter, picture(t.picture),
    enum(spacing: 8pt, ..t.steps.map(s => [#s])))
  #v(4pt)
  #ruled(columns: (1fr, 1fr, 1fr, 1.6fr), t.head.map(h => [#h]), t.rows.map(r => r.map(c => [#c])).map(r => (strong(r.at(0)), ..r.slice(1))))
  #if t.blocks.len() > 0 [
    == What a seam too wide does
    #for b in t.blocks { block(breakable: false, below: 9pt, { strong(b.title); [: ]; b.lines.join(" ") }) }
  ]
]

#let boards(facts) = [
  = ${chapterTitles.boards}
  #trueScale
  #for l in facts.boards.words { par(l) }
  #for b in facts.boards.sheets {
    block(breakable: false, above: 16pt, { sheetHeading(b); picture(b.picture) })
  }
]

#let foundations(blocks) = [
  = ${chapterTitles.foundations}
  #trueScale
  The sheets are in mirror image, for you sew on their printed side and the cloth lies on the other: what is right here is left in the block. The numbers are the order of sewing. Lay piece 1 on the blank side, right side up, well over all the lines round it. Lay piece 2 on it, right sides together, turn the sheet over and sew on the line between 1 and 2, some stitches past both ends. Fold the paper back on the line, trim the allowance, open the piece and press it; go on with piece 3. When all are sewn, cut along the dashed line. Short stitches, about 1.5 mm, let the paper tear away; it stays in until the edges are sewn to their neighbours.

  The sizes are of rectangles to cut, twice the allowance larger than the patch on every side: along the seam first, then across it.
  #for b in blocks {
    let told(s) = {
      if b.sections.len() > 1 { heading(level: 3, s.title) }
      if s.alone != "" { par(s.alone) } else {
        table(columns: (auto, auto, auto), column-gutter: 14pt, stroke: none, inset: (x: 0pt, y: 2.5pt),
          table.header([], [Cloth], [Cut at least]),
          ..s.pieces.map(p => (strong(p.number), p.cloth, p.cut)).flatten())
      }
    }
    let sheet(t) = {
      if t.sheet != "" { text(size: 9pt, fill: soft, t.sheet); linebreak() }
      picture(t.picture)
    }
    // what to cut stands over its sheet where both have room on a page, else beside it where that leaves room, else before it
    let standsOver(s) = s.sheets.len() > 0 and s.sheets.first().picture.heightPt + 17pt / 1pt * s.pieces.len() < 520
    let standsBeside(s) = not standsOver(s) and s.sheets.len() == 1 and measure(told(s)).width + 14pt + s.sheets.first().picture.widthPt * 1pt <= wide
    heading(level: 2, b.title)
    context {
      // a page that a sheet fills has no room for what is said of the block
      let holds = b.sections.len() > 0 and (not standsBeside(b.sections.first()) or b.sections.first().sheets.first().picture.heightPt < 520)
      for l in b.words { block(sticky: holds, l) }
      for s in b.sections {
        if standsBeside(s) {
          block(breakable: false, above: 16pt, grid(columns: (1fr, auto), column-gutter: 14pt, told(s), sheet(s.sheets.first())))
        } else {
          let over = standsOver(s)
          block(breakable: false, above: 16pt, { told(s); if over { sheet(s.sheets.first()) } })
          for t in s.sheets.slice(if over { 1 } else { 0 }) { block(breakable: false, above: 12pt, sheet(t)) }
        }
      }
    }
  }
]

#let templates(facts) = if facts.templates.len() > 0 [
  = ${chapterTitles.templates}
  #trueScale
  Full line: cut. Dashed line: seam. Arrow: straight grain.
  #for t in facts.templates {
    block(breakable: false, above: 16pt)[
      #sheetHeading(t)
      #if t.text != "" { par(t.text) }
      #picture(t.picture)
    ]
  }
]
`;
