/** The part of the oracle's interface that the tests use; the package carries no types of this entry. */
declare module 'unitmath' {
  interface OracleUnit {
    readonly value: number;
    to(unit: string): OracleUnit;
  }
  const makeUnit: (text: string) => OracleUnit;
  export default makeUnit;
}
