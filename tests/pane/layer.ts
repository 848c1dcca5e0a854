/**
 * How a test asks for something in an open layer, such as the control of a part of the line on top.
 *
 * Without a layout, focus never lands in the layer here, so the focus trap hides it from screen
 * readers a quarter of a second after it opens: a slow machine then does not find it by its role.
 * In a browser it stays readable (tests/page).
 */
export const inLayer = (name: string | RegExp): { name: string | RegExp; hidden: true } => ({ name, hidden: true });
