// The one function of jstat that this room uses; the library ships no types.
declare module "jstat" {
  const jStat: Readonly<{
    studentt: Readonly<{
      /** The value that Student's t stays below with probability `p`. */
      inv: (p: number, degreesOfFreedom: number) => number;
    }>;
  }>;
  export default jStat;
}
