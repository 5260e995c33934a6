import ModelEn from '../../content/en/model.mdx';
import ModelEs from '../../content/es/model.mdx';
import { useWords } from '../language/words.ts';
import { KnownMisses } from './sources/known-misses.tsx';
import './text-page.css';

/** How the model works and where it is wrong: one page for teachers. */
export default function ModelPage() {
  const { language } = useWords();
  const Text = language === 'es' ? ModelEs : ModelEn;
  return (
    <main id="main" class="text-page" tabIndex={-1}>
      <Text components={{ KnownMisses }} />
    </main>
  );
}
