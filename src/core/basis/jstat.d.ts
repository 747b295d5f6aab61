/** The one member of jStat in use; the library ships no types. The build takes only this and what it calls. */
declare module "jstat" {
  const jStat: { ibetainv(probability: number, a: number, b: number): number };
  export default jStat;
}
