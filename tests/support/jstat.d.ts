/** The few functions of jstat that the reference tests use; the package has no types. */
declare module "jstat" {
  interface JStat {
    readonly normal: {
      cdf(x: number, mean: number, sd: number): number;
      inv(p: number, mean: number, sd: number): number;
    };
    readonly beta: {
      cdf(x: number, a: number, b: number): number;
      inv(p: number, a: number, b: number): number;
    };
    readonly binomial: { cdf(k: number, n: number, p: number): number };
    readonly chisquare: { cdf(x: number, dof: number): number };
    readonly studentt: { cdf(x: number, dof: number): number };
  }
  const jstat: { readonly jStat: JStat };
  export default jstat;
}
