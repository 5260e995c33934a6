import { useEffect, useRef, useState } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { Announcer } from '../../ui/announcer.tsx';
import { PatchButton } from '../../ui/patch-button.tsx';
import { choiceWords } from './choice-words.ts';
import './choice.css';

export interface UndoChoiceProps {
  /** How many choices can be taken back. */
  readonly left: number;
  readonly onUndo: () => void;
}

/** A field of text has an undo of its own. */
const isTextField = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || target.matches('textarea, input:not([type=range], [type=radio], [type=checkbox])'));

/** Takes back the last choice, also by Ctrl+Z. It comes with the first choice and then keeps its place. */
export function UndoChoice({ left, onUndo }: UndoChoiceProps) {
  const words = choiceWords(useWords().language);
  const [used, setUsed] = useState(false);
  const undo = useRef(() => {});
  undo.current = () => {
    if (left === 0) return;
    setUsed(true);
    onUndo();
  };
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const wanted = (event.ctrlKey || event.metaKey) && !event.shiftKey && event.key.toLowerCase() === 'z';
      if (!wanted || isTextField(event.target)) return;
      event.preventDefault();
      undo.current();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, []);
  return (
    <div class="undo-choice">
      {left > 0 || used ? (
        <PatchButton onPress={() => undo.current()} refusal={left === 0 ? words.nothingLeft : undefined}>
          {words.undo}
        </PatchButton>
      ) : null}
      <Announcer message={used && left === 0 ? words.undone : ''} />
    </div>
  );
}
