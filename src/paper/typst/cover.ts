// The cover and the page "Cloth to buy" in Typst.
import { chapterTitles } from '#paper/words';

export const coverTypst = `
#import "/hand.typ": *

#let cover(facts) = {
  let long = facts.title.clusters().len()
  show title: set text(font: serif, weight: 600, size: if long > 90 { 17pt } else if long > 40 { 21pt } else { 28pt })
  show title: set par(leading: 0.4em)
  block(below: 10pt, title())
  if facts.designer != "" { block(below: 12pt, text(size: 12pt, fill: soft, facts.designer)) }
  if facts.cover.words.len() > 0 { block(below: 12pt, text(size: 11pt, for l in facts.cover.words { par(l) })) }
  hairline
  // the quilt takes what the words above and below leave
  block(height: 1fr, width: 100%, above: 14pt, below: 14pt, align(center + horizon,
    image("/pictures/" + facts.cover.picture.name + ".svg", height: 100%, width: 100%, fit: "contain", alt: facts.cover.picture.alt)))
  hairline
  grid(columns: (auto, 1fr), column-gutter: 18pt, row-gutter: 6pt,
    ..facts.cover.facts.map(f => (text(fill: soft, f.name), f.value)).flatten())
  if facts.sizes.len() > 0 {
    v(8pt)
    grid(columns: facts.sizes.map(_ => auto), column-gutter: 24pt, row-gutter: 4pt, align: bottom,
      ..facts.sizes.map(s => picture(s.picture)), ..facts.sizes.map(s => text(size: 9pt, s.title)))
  }
  v(8pt)
  grid(columns: (1fr, 1fr, 1fr), column-gutter: 12pt, row-gutter: 6pt,
    ..facts.cover.swatches.map(s => grid(columns: (auto, 1fr), column-gutter: 6pt, align: horizon, picture(s.picture), text(size: 9pt, s.name))))
  if facts.cover.moreCloths > 0 { text(size: 9pt, fill: soft)[and #facts.cover.moreCloths more: see Cloth to buy] }
}

#let cloths(facts) = [
  = ${chapterTitles.cloth}
  #let priced = facts.total.len() > 0
  #let others = facts.sizes.len()
  #let buys = if others == 0 { ([Buy],) } else { facts.sizeHeads.map(h => h.replace("\u{a0}", " ")) }
  #ruled(columns: (auto, 1fr) + (if others == 0 { auto } else { 0.8fr },) * buys.len() + (auto, if others == 0 { 1.3fr } else { 1.5fr }) + if priced { (auto,) }, ([Cloth], [Name]) + buys + ([Usable], [For]) + if priced { ([Price],) },
    facts.cloths.map(c => (picture(c.picture), c.name, strong(c.buy), ..c.others.map(strong), c.width, c.usedFor) + if priced { (c.price,) }))
  #for l in facts.total { par(l) }
  #if facts.amounts != none { block(breakable: false, above: 16pt)[
    #heading(level: 2, if others > 0 { "What is in each amount: " + facts.sizeHeads.first() } else { "What is in each amount" })
    #block(below: 6pt, text(size: 9pt, fill: soft)[The length that the pieces take, what goes off at the ends, what is over because shops cut by steps; and what would change the amount.])
    #let a = facts.amounts
    #ruled(columns: (auto,) * (a.head.len() - 1) + (1fr,), a.head, a.rows.map(r => (strong(r.at(0)), ..r.slice(1))))
    #for l in a.remarks { par(l) }
  ] }
  #if facts.values != none { block(breakable: false, above: 14pt)[
    #block(below: 6pt, text(size: 9pt, fill: soft)[From light to dark, in grey, with the lightness L\\* of each: cloths that stand side by side in a block should differ by 15 or more where they are meant to be told apart.])
    #picture(facts.values)
  ] }
  #if facts.notices.len() > 0 [
    == Mind
    #for n in facts.notices { warned(n) }
  ]
  // the maker's words never stand alone on a page
  #block(breakable: false, sticky: facts.maker.len() > 0, above: 16pt, {
    set text(size: 9.5pt)
    set par(leading: 0.55em, spacing: 0.7em)
    grid(columns: (1fr, 1fr), column-gutter: gutter,
      {
        heading(level: 2, "Notions")
        for p in facts.notions { par({ strong(p.heading); [: ]; p.lines.join(" ") }) }
      },
      {
        heading(level: 2, "Before you start")
        list(..facts.before)
      })
  })
  #if facts.maker.len() > 0 [
    == From the maker
    #for p in facts.maker { par(p) }
  ]
]
`;
