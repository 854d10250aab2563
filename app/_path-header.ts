/** The header in which proxy.ts tells the pages at which address they were asked; what a browser sends under this name never arrives. */
export const pathHeader = "x-evenfield-path";
