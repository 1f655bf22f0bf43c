// What each chapter of a pattern is called: at its head, and where chapters are chosen.

export const chapterTitles = {
  cover: 'Cover',
  handout: 'Handout',
  quilt: 'The quilt in line and grey',
  cloth: 'Cloth to buy',
  colourways: 'Colourways',
  cutting: 'Cutting',
  pieces: 'Piece key',
  blocks: 'The blocks, step by step',
  top: 'The top',
  finishing: 'Finishing',
  templates: 'Templates',
  boards: 'Gauges and boards at true size',
  foundations: 'Foundations',
  swatches: 'Swatches',
  colouring: 'To colour in',
  labels: 'Labels for the pieces',
  glossary: 'Words',
  cautions: 'Cautions',
  corrections: 'Corrections',
  'run-sheet': 'Run sheets',
} as const;
