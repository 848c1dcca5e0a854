/** The part of the statistics library that the tests ask; it brings no types. */
declare module "jstat" {
  const jstat: { readonly studentt: { inv(probability: number, degrees: number): number } };
  export default jstat;
}
