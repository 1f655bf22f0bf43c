// The top of a document that says what a quilt in normal form is.
import { exactText } from '#craft/measure';
import type { QuiltDocument } from './document.ts';
import type { ArrangementDesign, BorderDesign, CellDesign, SashingDesign, SectionDesign, TopDesign } from './quilt.ts';

type WrittenTop = QuiltDocument['top'];

export const toTop = (top: TopDesign): WrittenTop => ({
  set: top.set,
  ...toMiddle(top),
  borders: top.borders.map(toBorder),
});

const toMiddle = (top: TopDesign): WrittenTop => {
  switch (top.set) {
    case 'straight':
      return {
        ...(top.arrangement === null
          ? { rows: top.rows.map((row) => row.map(toCell)) }
          : toArrangement(top.arrangement)),
        ...toSashing(top.sashing),
      };
    case 'on-point':
      return {
        rows: top.rows.map((row) => row.map(toCell)),
        between: top.between.map((row) => row.map(toCell)),
        settingFabric: top.settingFabric,
        float: exactText(top.float),
        ...toSashing(top.sashing),
      };
    case 'sections':
      return { sections: toSection(top.sections) };
  }
};

const toArrangement = ({ darkCorner, ...arrangement }: ArrangementDesign): Pick<WrittenTop, 'arrangement'> => ({
  arrangement: { ...arrangement, ...(darkCorner === null ? {} : { darkCorner }) },
});

const toSection = (section: SectionDesign): NonNullable<WrittenTop['sections']> => {
  switch (section.kind) {
    case 'run': {
      const parts = section.parts.map(toSection);
      return section.run === 'down' ? { down: parts } : { across: parts };
    }
    case 'strip':
      return { strip: section.fabric, width: exactText(section.width) };
    case 'fill':
      return { fill: section.fabric };
    case 'block': {
      const { block, turn, mirror, colouring } = section;
      return { block, turn, mirror, colouring };
    }
  }
};

const toCell = (cell: CellDesign): NonNullable<WrittenTop['rows']>[number][number] => {
  if (cell.kind === 'plain') return { plain: cell.fabric };
  const { block, turn, mirror, colouring } = cell;
  return { block, turn, mirror, colouring };
};

const toSashing = (sashing: SashingDesign | null): Pick<WrittenTop, 'sashing'> => {
  if (sashing === null) return {};
  const { across, down, fabric, cornerstones, outer } = sashing;
  return {
    sashing: {
      width: { across: exactText(across), down: exactText(down) },
      fabric,
      outer,
      ...(cornerstones === null ? {} : { cornerstones }),
    },
  };
};

const toBorder = (border: BorderDesign): NonNullable<WrittenTop['borders']>[number] => {
  if (border.kind === 'pieced') {
    const { block, spacer } = border;
    return { pieced: { block, ...(spacer === null ? {} : { spacer }) } };
  }
  const { width, fabric, corners, cornerFabric, grain } = border;
  return { width: exactText(width), fabric, corners, ...(cornerFabric === null ? {} : { cornerFabric }), grain };
};
