// Which words of the trade do these pages use, and what do they mean in plain ones? Written by us; the words are long in use,
// common practice, no source. A word that the pages at hand do not use is left out.

export interface Term {
  readonly word: string;
  readonly meaning: string;
}

interface KnownTerm extends Term {
  /** Where it stands in a text, in any of its forms. */
  readonly seen: RegExp;
}

/** @param written all that stands on the pages, whatever its order */
export const glossaryOf = (written: readonly string[]): readonly Term[] => {
  const text = written.join('\n');
  return known.filter(({ seen }) => seen.test(text)).map(({ word, meaning }) => ({ word, meaning }));
};

const known: readonly KnownTerm[] = [
  {
    word: 'Allowance',
    seen: /\ballowances?\b/i,
    meaning: 'the cloth between a seam and the edge of a piece; it is in every cut size.',
  },
  { word: 'Backing', seen: /\bbacking\b/i, meaning: 'the cloth on the back of the quilt.' },
  {
    word: 'Baste',
    seen: /\bbast(e|ed|ing)\b/i,
    meaning: 'to hold layers together for a while, with pins or long stitches.',
  },
  { word: 'Batting', seen: /\bbatting\b/i, meaning: 'the soft layer between top and backing.' },
  {
    word: 'Bias',
    seen: /\bbias\b/i,
    meaning: 'the slanting direction of a cloth, at 45° to its threads, in which it stretches most.',
  },
  { word: 'Binding', seen: /\bbinding\b/i, meaning: 'the strip that covers the raw edge of the quilt.' },
  { word: 'Board', seen: /\bboards?\b/i, meaning: 'all pieces of a block laid out in place, beside the machine.' },
  { word: 'Border', seen: /\bborders?\b/i, meaning: 'a frame of strips or blocks round the middle of the quilt.' },
  {
    word: 'Chain',
    seen: /\bchain\b/i,
    meaning: 'to sew like pairs one after another without cutting the thread; snip them apart at the end.',
  },
  { word: 'Corner square', seen: /\bcorner squares?\b/i, meaning: 'the square where two borders meet.' },
  { word: 'Cornerstone', seen: /\bcornerstones?\b/i, meaning: 'the square where strips of sashing cross.' },
  {
    word: 'Ease',
    seen: /\beas(e|ed|ing) (in|it)\b/i,
    meaning: 'to spread a little too much cloth evenly along a seam with pins.',
  },
  {
    word: 'Fat eighth',
    seen: /\bfat eighths?\b/i,
    meaning: 'a quarter of a yard cut as half a fat quarter, not as a strip across the cloth.',
  },
  {
    word: 'Fat quarter',
    seen: /\bfat quarters?\b/i,
    meaning: 'a quarter of a yard cut as half a yard by half the width, not as a strip across the cloth.',
  },
  { word: 'Finished', seen: /\bfinished\b/i, meaning: 'of a size: without allowances, as it shows in the quilt.' },
  {
    word: 'Grain',
    seen: /\bgrain\b/i,
    meaning: 'the direction of the threads: along the selvage the firmest, across it a little less so.',
  },
  {
    word: 'Inside corner',
    seen: /\binside corners?\b/i,
    meaning: 'a corner that points into a unit; what goes there is set in.',
  },
  { word: 'Log', seen: /\blogs?\b/i, meaning: 'a strip sewn along one whole side of what is there.' },
  { word: 'Mitre', seen: /\bmitred?s?\b/i, meaning: 'a corner whose seam runs at 45°.' },
  {
    word: 'Nest',
    seen: /\bnest(s|ed)?\b|\bthey lock\b/i,
    meaning: 'to lay two seams against each other with their allowances in opposite directions, so that they lock.',
  },
  { word: 'On point', seen: /\bon point\b/i, meaning: 'of blocks: standing on a corner.' },
  {
    word: 'Partial seam',
    seen: /\bhalf sewn\b|\bpartial seams?\b/i,
    meaning: 'a seam of which half is sewn first, and the rest when its turn comes.',
  },
  {
    word: 'Press',
    seen: /\bpress(ed)?\b/i,
    meaning: 'to set the iron down and lift it; pushing it stretches the pieces.',
  },
  {
    word: 'Quilt',
    seen: /\bto quilt\b|\bquilting\b/i,
    meaning: 'as a verb: to sew through top, batting and backing together.',
  },
  {
    word: 'Right side, wrong side',
    seen: /\b(right sides?|wrong sides?) (up|together|facing)\b/i,
    meaning: 'the face of a cloth, and its back.',
  },
  {
    word: 'Ruler setting',
    seen: /\bruler settings?\b/i,
    meaning: 'one width measured with the ruler; fewer of them are fewer chances to slip.',
  },
  { word: 'Sashing', seen: /\bsash(es|ing)?\b/i, meaning: 'strips between blocks.' },
  { word: 'Scrappy', seen: /\bscrappy\b/i, meaning: 'in cloths that change from block to block.' },
  { word: 'Selvage', seen: /\bselvages?\b/i, meaning: 'the woven edge of the cloth; it is cut off.' },
  {
    word: 'Set-in seam',
    seen: /\bset in\b|\bset-in\b/i,
    meaning: 'a seam that turns a corner, sewn from mark to mark.',
  },
  {
    word: 'Setting triangle',
    seen: /\b(setting|side|corner) triangles?\b/i,
    meaning: 'a triangle at the side or corner that fills the edge of a quilt set on point.',
  },
  {
    word: 'Sleeve',
    seen: /\bsleeve\b/i,
    meaning: 'a tube of cloth on the back, for the rod that the quilt hangs from.',
  },
  { word: 'Spacer', seen: /\bspacers?\b/i, meaning: 'a plain strip that makes a border of blocks fit.' },
  {
    word: 'Square up',
    seen: /\bsquar(e|ing) (up|the corners)\b/i,
    meaning: 'to trim to straight edges that meet at right angles.',
  },
  { word: 'Step-out', seen: /\bstep-outs?\b/i, meaning: 'a unit sewn before class, to show one stage of the work.' },
  {
    word: 'Strip',
    seen: /\bstrips?\b/i,
    meaning: 'a piece cut across the whole width of the cloth, from which others are cut; also any long narrow piece.',
  },
  {
    word: 'Strip height',
    seen: /\bstrip heights?\b/i,
    meaning: 'how far from edge to edge a strip is cut; strips of one height take one ruler setting.',
  },
  { word: 'Stroke', seen: /\bstrokes?\b/i, meaning: 'one pass of the cutter along the ruler.' },
  { word: 'Sub-cut', seen: /\bsub-cuts?\b/i, meaning: 'a cut across a strip.' },
  { word: 'Tail', seen: /\btails?\b/i, meaning: 'an end of the binding that hangs loose until both are joined.' },
  { word: 'Template', seen: /\btemplates?\b/i, meaning: 'a shape to cut round, printed at true size.' },
  { word: 'Top', seen: /\btop\b/i, meaning: 'the pieced upper layer of the quilt.' },
  { word: 'Unit', seen: /\bunits?\b/i, meaning: 'pieces that are already joined.' },
  { word: 'Usable width', seen: /\busable\b/i, meaning: 'the width of the cloth without its selvages.' },
  {
    word: 'Walking foot',
    seen: /\bwalking foot\b/i,
    meaning: 'a foot of the machine that moves the upper layer along with the lower.',
  },
];
