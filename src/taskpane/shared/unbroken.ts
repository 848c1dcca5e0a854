/** A figure and its sign or unit stay on one line: "5 %" is never broken after the 5. */
const FIGURE = /(\d|½|¼|¾) (?=(?:%|in\b|mm\b|cm\b|m\b|kg\b|t\b|lb\b|degrees?\b|°))/g;
export const unbroken = (text: string): string => text.replace(FIGURE, "$1\u00a0");
