// Taken out of their objects once: where the functions run by themselves, each look at a global costs more than the sum behind it.
const { round, min } = Math;
const { isFinite } = Number;
/** Share as whole percent; nothing reads 100 % before it is there. */
export function percent(share: number): string {
  if (!isFinite(share)) return "more than all";
  const whole = round(share * 100 - 1e-9);
  return `${(share < 1 ? min(99, whole) : whole).toString()} %`;
}
export function count(number: number, one: string, many = `${one}s`): string {
  return `${showNumber(number)} ${number === 1 ? one : many}`;
}
/** 10000 as 10,000. */
export function showNumber(number: number): string {
  return String(number).replace(/\B(?=(\d{3})+$)/g, ",");
}
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
