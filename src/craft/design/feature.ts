// What the format can say and this edition cannot plan yet, by name.

export type Feature = 'extras';
