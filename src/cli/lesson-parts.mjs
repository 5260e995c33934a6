const isElement = ({ type }) => type === 'mdxJsxFlowElement' || type === 'mdxJsxTextElement';

/** Every part of a lesson, with its attributes that are plain text, in order. */
function partsBelow(node) {
  const here = isElement(node)
    ? [
        {
          name: node.name,
          props: Object.fromEntries(
            node.attributes.flatMap(({ name, value }) => (typeof value === 'string' ? [[name, value]] : [])),
          ),
        },
      ]
    : [];
  return [...here, ...(node.children ?? []).flatMap(partsBelow)];
}

const literal = (value) => ({ type: 'Literal', value, raw: JSON.stringify(value) });
const textList = (texts) => ({ type: 'ArrayExpression', elements: texts.map(literal) });
const property = (name, value) => ({
  type: 'Property',
  key: { type: 'Identifier', name },
  value,
  kind: 'init',
  method: false,
  shorthand: false,
  computed: false,
});

/** `export const parts = {…}` as a syntax tree. */
const exported = (lists) => ({
  type: 'ExportNamedDeclaration',
  declaration: {
    type: 'VariableDeclaration',
    kind: 'const',
    declarations: [
      {
        type: 'VariableDeclarator',
        id: { type: 'Identifier', name: 'parts' },
        init: {
          type: 'ObjectExpression',
          properties: Object.entries(lists).map(([name, texts]) => property(name, textList(texts))),
        },
      },
    ],
  },
  specifiers: [],
  source: null,
});

const each = (texts) => [...new Set(texts.filter((text) => text !== undefined))];

/**
 * A step of reading MDX: hands out beside the text which components it uses, which facts and computed numbers it cites and which
 * terms it links, each once and in order, as `parts`.
 */
export function lessonParts() {
  return (tree) => {
    const found = partsBelow(tree);
    const of = (component, prop) =>
      each(found.filter(({ name }) => name === component).map(({ props }) => props[prop]));
    const lists = {
      components: each(found.map(({ name }) => name)),
      facts: of('Num', 'fact'),
      computed: of('Num', 'of'),
      terms: of('Term', 'id'),
    };
    const program = { type: 'Program', sourceType: 'module', body: [exported(lists)] };
    tree.children.unshift({ type: 'mdxjsEsm', value: '', data: { estree: program } });
  };
}
