/** Every formula of the workings as MathML, made while the app is built. */
declare module 'virtual:formula-mathml' {
  /** By the formula's id: to look at, and with '@name@' in the place of each letter. */
  export const mathml: Readonly<Record<string, { readonly formula: string; readonly filled: string }>>;
}
