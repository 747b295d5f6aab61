/** The one member of jStat in use; the library ships no types. The build takes only its special functions. */
declare module "jstat" {
  const jStat: { ibetainv(probability: number, a: number, b: number): number };
  export default jStat;
}
