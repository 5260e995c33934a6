/** Where each constant is used: 'gin/facts.ginFacts.key' to the files of src/model that use it. Made at build time. */
declare module 'virtual:fact-uses' {
  export const factUses: Readonly<Record<string, readonly string[]>>;
}
