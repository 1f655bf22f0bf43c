// The Typst sources of the pattern by path.
import { chapterTitles } from '#paper/words';
import { chaptersTypst } from './chapters.ts';
import { coverTypst } from './cover.ts';
import { handTypst } from './hand.ts';
import { sheetsTypst } from './sheets.ts';

const mainTypst = `
#import "/hand.typ": hand
#import "/cover.typ": cloths, cover
#import "/sheets.typ": colouring, colourways, corrections, glossary, handoutHead, labels, pieceKey, quiltLooks, runSheet, swatchPage
#import "/chapters.typ": blockPages, boards, cautionsInBrief, chains, cutting, foundations, parts, seamTest, templates, top
#let facts = json("/facts.json")
#set document(title: facts.title, author: if facts.designer == "" { () } else { facts.designer }, date: none)
#show: body => hand(facts.title, sys.inputs.at("paper", default: "us-letter"), facts.handout != none, body)
// with other sizes beside it, the quilt as drawn is named by its own
#let named(chapter) = if facts.sizeHeads.len() > 0 { chapter + ": " + facts.sizeHeads.first() } else { chapter }
#let chapter = (
  cover: () => cover(facts),
  handout: () => handoutHead(facts.handout),
  quilt: () => quiltLooks(facts.looks),
  cloth: () => cloths(facts),
  colourways: () => colourways(facts.colourways),
  cutting: () => {
    cutting(named("${chapterTitles.cutting}"), facts.cutting, most: if facts.handout == none { 400pt } else { 330pt }, lesson: facts.handout != none, across: facts.cutAcross)
    for s in facts.sizes { cutting("${chapterTitles.cutting}: " + s.title, s.cutting) }
  },
  pieces: () => pieceKey(facts.pieceKey, facts.sizeHeads),
  blocks: () => for b in facts.blocks { blockPages(b, facts.sizeHeads) },
  chains: () => chains(facts.chains),
  top: () => {
    top(named("${chapterTitles.top}"), facts.top)
    for s in facts.sizes { top("${chapterTitles.top}: " + s.title, s.top) }
  },
  finishing: () => {
    parts(named("${chapterTitles.finishing}"), facts.finish)
    for s in facts.sizes { parts("${chapterTitles.finishing}: " + s.title, s.finish) }
  },
  templates: () => templates(facts),
  seam-test: () => seamTest(facts.seamTest),
  boards: () => boards(facts),
  foundations: () => foundations(facts.foundations),
  swatches: () => swatchPage(facts.cloths),
  colouring: () => colouring(facts.colouring),
  labels: () => labels(facts.labels),
  glossary: () => glossary(facts.glossary),
  run-sheet: () => for s in facts.runSheets { runSheet(s) },
  corrections: () => corrections(facts),
  cautions: () => if facts.handout == none { parts("${chapterTitles.cautions}", facts.cautions) } else { cautionsInBrief(facts.cautions) },
)
#for name in facts.chapters { (chapter.at(name))() }
`;

export const patternSources: Readonly<Record<string, string>> = {
  '/main.typ': mainTypst,
  '/hand.typ': handTypst,
  '/cover.typ': coverTypst,
  '/chapters.typ': chaptersTypst,
  '/sheets.typ': sheetsTypst,
};
