/** The one member of jStat in use; the library ships no types. */
declare module "jstat" {
  const jStat: { readonly studentt: { inv(probability: number, degreesOfFreedom: number): number } };
  export default jStat;
}
