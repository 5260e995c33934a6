/**
 * Spanish lines that speak to the reader as tú. A museum or a school that prefers usted replaces exactly these; every other
 * line keeps to infinitives, nouns and impersonal forms.
 */
export const addressed: readonly RegExp[] = [
  /^stations\.\w+\.instruction$/,
  /^scenes\.firstLook$/,
  /^verdicts\.refusals\.cropFailed$/,
];
