/** The one function of svgdom that we call; the package brings no types. */

declare module 'svgdom' {
  export function createSVGWindow(): Window;
}
