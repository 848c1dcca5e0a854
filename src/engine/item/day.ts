import { showDate } from "../numbers/calendar";

export const later = (day: number, asOf: number | null): asOf is number => asOf !== null && day > asOf;
export const ahead = (asOf: number): string => `later than the day of judging, ${showDate(asOf)}`;
