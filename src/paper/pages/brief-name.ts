// A maker's name where there is little room: in tables and on labels, beside a letter that says which it is.

/** Our own figure: two lines of a narrow column. */
const most = 28;

/** The name, or its beginning and an ellipsis. */
export const briefName = (name: string): string => {
  const signs = [...name];
  return signs.length <= most
    ? name
    : `${signs
        .slice(0, most - 1)
        .join('')
        .trimEnd()}…`;
};
