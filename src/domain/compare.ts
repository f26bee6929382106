/** For `sort`: by the plain order of the values, the same in every locale. */
export const compare = <T extends number | string>(a: T, b: T): number => (a < b ? -1 : a > b ? 1 : 0);
