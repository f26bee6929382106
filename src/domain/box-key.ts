/** What a box is known by inside one week: "childId@date". */
export const boxKey = ({ childId, date }: { readonly childId: string; readonly date: string }): string =>
  `${childId}@${date}`;
