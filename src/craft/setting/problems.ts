// What can be wrong with a set that its document alone does not show: sizes that do not fit together.
import type { Length } from '#craft/measure';

interface At {
  readonly path: string;
}

export type SettingProblem =
  | (At & {
      /** A set on point or an arrangement takes square blocks only. */
      readonly code: 'setting/not-square';
      readonly block: string;
      readonly found: readonly [Length, Length];
    })
  | (At & {
      /** All blocks of a set on point have one size. */
      readonly code: 'setting/sizes-differ';
      readonly block: string;
      readonly found: Length;
      readonly other: string;
      readonly expected: Length;
    })
  | (At & { readonly code: 'setting/no-block' })
  | (At & {
      /** On point a sash lies slanted: there is no upright and no level one. */
      readonly code: 'setting/sash-widths';
      readonly across: Length;
      readonly down: Length;
    })
  | (At & {
      /** No half, or no corner, of the block is clearly the darkest. */
      readonly code: 'setting/no-dark-corner';
      readonly block: string;
      readonly colouring: string;
    })
  | (At & {
      readonly code: 'setting/border-does-not-fit';
      readonly block: string;
      /** Finished, along the border. */
      readonly along: Length;
      /** Of what the border goes round, across and down. */
      readonly sides: readonly [Length, Length];
      /** Width of the spacers that would make it fit: left and right, top and bottom. */
      readonly spacer: readonly [Length, Length];
    })
  | (At & {
      readonly code: 'setting/border-corner-without-fabric';
      readonly block: string;
      readonly size: readonly [Length, Length];
    })
  | (At & {
      /** Parts of one section that must be equally wide (or high) are not, or do not add up to what they must fill. */
      readonly code: 'setting/section-sum';
      readonly side: 'width' | 'height';
      readonly found: Length;
      readonly expected: Length;
    })
  | (At & {
      readonly code: 'setting/nothing-to-fill';
      readonly side: 'width' | 'height';
      /** What the other parts add up to. */
      readonly found: Length;
      readonly available: Length;
    })
  | (At & {
      /** Nothing in the section or round it says how wide or high it is. */
      readonly code: 'setting/section-open';
      readonly side: 'width' | 'height';
    });
