// What the trade works out and this program does not, with the reason.

/** By `fn` of the worked figures. */
export const notComputed: Readonly<Record<string, string>> = {
  seam_error_stack: 'errors of many seams are not added up: a plan holds sizes as they should be',
  hst_four_round_edge: 'four at a time, sewn round the edge, leave every edge on the bias and are not among the ways',
  binding_width: 'the document says how wide binding is cut; only whether that is enough is judged',
  bias_on_selvage: 'bias strips come from a square cut in one piece, never measured along the selvage',
  piano_keys: 'a border of keys is drawn as a block of one size, with a spacer to make it fit',
  keystone: 'what cloth costs is told, never a price to ask',
  contrast: 'labels take the ink that stands out more; the ratio itself is not told',
  munsell_value: 'lightness is CIE L* alone',
  munsell_Y: 'lightness is CIE L* alone',
};
