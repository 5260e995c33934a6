const moduleId = 'virtual:formula-mathml';
/** Vite's sign for a module that no file holds. */
const resolvedId = `\0${moduleId}`;

/** 'c_1' as TeX: a letter with an index. */
function symbolTex(name) {
  const [letter, index] = name.split('_');
  return index === undefined ? `{${letter}}` : `{${letter}_{${index}}}`;
}

/** Whole digits in threes, as both languages of the page write them. */
const byThrees = (digits) => digits.replace(/\B(?=(?:\d{3})+$)/g, ',');

/**
 * Style sheets only, no style attributes: the page's content security policy allows no other. Nor may a fraction in a fraction
 * shrink its letters: they are to be read on a phone.
 */
const bare = (mathml) => {
  const plain = mathml
    .replace(/ (?:style|class|scriptlevel)="[^"]*"/g, '')
    .replace(/<mn>(\d{4,})(\.\d+)?<\/mn>/g, (_, whole, part = '') => `<mn>${byThrees(whole)}${part}</mn>`);
  // Brackets grow around fractions only; around letters alone each pair would grow out of the one inside.
  return /<mfrac>|<msqrt>/.test(plain) ? plain : plain.replaceAll(' stretchy="true"', ' stretchy="false"');
};

/**
 * Turns the texts of formulas into MathML, once while the app is built, so that neither library reaches the browser.
 * @param {Readonly<Record<string, string>>} texts
 * @returns {Promise<Record<string, {formula: string, filled: string}>>} filled: with '@name@' in the place of each letter
 */
export async function formulaMathml(texts) {
  const { parse } = await import('mathjs');
  const { default: temml } = await import('temml');
  const render = (node, symbol) => {
    const tex = node.toTex({
      parenthesis: 'auto',
      // A number stands as it is written, never as a power of ten.
      handler: (each) => (each.isSymbolNode ? symbol(each.name) : each.isConstantNode ? String(each.value) : undefined),
    });
    // A raised dot is easily lost between numbers.
    return bare(temml.renderToString(tex.replaceAll('\\cdot', '\\times '), { displayMode: true, throwOnError: true }));
  };
  return Object.fromEntries(
    Object.entries(texts).map(([id, text]) => {
      const node = parse(text);
      const filled = render(node, (name) => `{\\text{@${name.replace('_', '-')}@}}`);
      return [id, { formula: render(node, symbolTex), filled }];
    }),
  );
}

/** Offers the formulas as a module of their own: `virtual:formula-mathml`. */
export const formulaModule = (texts) => ({
  name: 'formula-mathml',
  resolveId: (id) => (id === moduleId ? resolvedId : undefined),
  load: async (id) =>
    id === resolvedId ? `export const mathml = ${JSON.stringify(await formulaMathml(texts))};` : undefined,
});
