// What the format can say and this edition cannot plan yet, by name.

export type Feature =
  | 'on-point'
  | 'sections'
  | 'arrangement'
  | 'arcs'
  | 'precuts'
  | 'corner-squares'
  | 'mitred-corners'
  | 'pieced-borders'
  | 'bias-binding'
  | 'methods'
  | 'extras';
