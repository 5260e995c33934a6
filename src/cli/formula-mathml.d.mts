import type { Plugin } from 'vite';

/** A formula to look at, and the same with '@name@' in the place of each letter, both MathML. */
export interface FormulaMarkup {
  readonly formula: string;
  readonly filled: string;
}
export declare function formulaMathml(texts: Readonly<Record<string, string>>): Promise<Record<string, FormulaMarkup>>;
export declare function formulaModule(texts: Readonly<Record<string, string>>): Plugin;
