// Where the ways stand at Cut: no id of a cloth holds the sign.
export const waysPlace = '~ways';
