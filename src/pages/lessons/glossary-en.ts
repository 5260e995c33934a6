import type { Glossary } from '../../lessons/glossary.ts';

/** The files of the glossary by path. */
export const areas = import.meta.glob<Glossary>('../../../content/en/glossary/*.json', {
  eager: true,
  import: 'default',
});
