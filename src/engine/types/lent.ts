/** How a cell of "As-new from" tells that Gear types lent the sizes. Apart, since the worksheet functions need no more of it. */
export const TYPES_TITLE = "Gear types";
/** How such a cell begins; the row, the type and where its sizes were read follow. */
export const LENT_BEGINS = `${TYPES_TITLE}, row `;
export const isLent = (text: string): boolean => text.startsWith(LENT_BEGINS);
