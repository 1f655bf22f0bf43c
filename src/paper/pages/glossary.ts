// The words of the trade that the pages use, in plain ones. Written by us; the words are long in use, common practice, no source.

export interface Term {
  readonly word: string;
  readonly meaning: string;
}

export const glossary: readonly Term[] = [
  { word: 'Allowance', meaning: 'the cloth between a seam and the edge of a piece; it is in every cut size.' },
  { word: 'Backing', meaning: 'the cloth on the back of the quilt.' },
  { word: 'Baste', meaning: 'to hold layers together for a while, with pins or long stitches.' },
  { word: 'Batting', meaning: 'the soft layer between top and backing.' },
  { word: 'Bias', meaning: 'the slanting direction of a cloth, at 45° to its threads, in which it stretches most.' },
  { word: 'Binding', meaning: 'the strip that covers the raw edge of the quilt.' },
  { word: 'Board', meaning: 'all pieces of a block laid out in place, beside the machine.' },
  { word: 'Butted border', meaning: 'a border whose end strips lie across the ends of its side strips.' },
  { word: 'Chain piecing', meaning: 'sewing like pairs one after another without cutting the thread.' },
  { word: 'Check size', meaning: 'what a unit should measure after a seam is sewn and pressed.' },
  { word: 'Cornerstone', meaning: 'the square where strips of sashing cross.' },
  { word: 'Finished size', meaning: 'the size when all seams round a piece or block are sewn.' },
  {
    word: 'Grain',
    meaning: 'the direction of the threads: along the selvage the firmest, across it a little less so.',
  },
  { word: 'Log', meaning: 'a strip sewn along one whole side of what is there.' },
  { word: 'Mitre', meaning: 'a corner whose seam runs at 45°.' },
  {
    word: 'Nest',
    meaning: 'to lay two seams against each other with their allowances in opposite directions, so that they lock.',
  },
  { word: 'Partial seam', meaning: 'a seam of which half is sewn first, and the rest when its turn comes.' },
  { word: 'Press', meaning: 'to set the iron down and lift it; pushing it stretches the pieces.' },
  { word: 'Sashing', meaning: 'strips between blocks.' },
  { word: 'Selvage', meaning: 'the woven edge of the cloth; it is cut off.' },
  { word: 'Set-in seam', meaning: 'a seam that turns a corner, sewn from mark to mark.' },
  { word: 'Setting triangle', meaning: 'a triangle that fills the edge of a quilt set on point.' },
  { word: 'Strip', meaning: 'a piece cut across the whole width of the cloth, from which others are cut.' },
  { word: 'Sub-cut', meaning: 'a cut across a strip.' },
  { word: 'Template', meaning: 'a shape to cut round, printed at true size.' },
  { word: 'Top', meaning: 'the pieced upper layer of the quilt.' },
  { word: 'Unfinished size', meaning: 'the size of a unit or block with the allowances round it.' },
  { word: 'Unit', meaning: 'pieces that are already joined.' },
  { word: 'Usable width', meaning: 'the width of the cloth without its selvages.' },
];
