/** The text of a script, with everything that it imports, or of a style: for a page that holds it within itself. */
declare module '*?inlined' {
  const text: string;
  export default text;
}
