import { useEffect } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { ChecksSection } from './checks-section.tsx';
import { FactsSection } from './facts-section.tsx';
import { sourcesWords } from './sources-words.ts';
import './sources.css';

/** Every constant with what it rests on, and every outside check with our figure beside the published one. */
export default function SourcesPage() {
  const { language, messages } = useWords();
  const words = sourcesWords(language);
  useEffect(() => {
    document.title = `${words.title}: ${messages.common.product}`;
  }, [words, messages]);
  return (
    <main id="main" class="sources-page" tabIndex={-1}>
      <h1>{words.title}</h1>
      <p class="sources-lead">{words.lead}</p>
      {language === 'en' ? null : <p class="caption">{words.english}</p>}
      <div class="sources-columns">
        <FactsSection />
        <ChecksSection />
      </div>
    </main>
  );
}
