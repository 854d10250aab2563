// The functions of jstat that this room uses; the library ships no types.
declare module "jstat" {
  const jStat: Readonly<{
    studentt: Readonly<{
      /** The value that Student's t stays below with probability `p`. */
      inv: (p: number, degreesOfFreedom: number) => number;
    }>;
    normal: Readonly<{
      inv: (p: number, mean: number, deviation: number) => number;
      cdf: (x: number, mean: number, deviation: number) => number;
    }>;
    beta: Readonly<{ cdf: (x: number, first: number, second: number) => number }>;
    chisquare: Readonly<{ inv: (p: number, degreesOfFreedom: number) => number }>;
    /** Complement of the error function. */
    erfc: (x: number) => number;
    /** Logarithm of the gamma function. */
    gammaln: (x: number) => number;
  }>;
  export default jStat;
}
