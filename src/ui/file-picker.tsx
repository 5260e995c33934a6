import { useId } from 'preact/hooks';
import { useWords } from '../language/words.ts';

export interface FilePickerProps {
  readonly label: string;
  readonly help?: string;
  /** Kinds of file, as the input's accept attribute wants them: '.csv,text/csv'. */
  readonly accept: string;
  /** Name of the file in use; a file that was refused is not in use. */
  readonly inUse: string | null;
  readonly onText: (text: string, name: string) => void;
  /** The file could not be read at all. */
  readonly onFail: (name: string) => void;
  /** Files above this many bytes are refused as unreadable. */
  readonly mostBytes?: number;
}

const tenMegabytes = 10_000_000;

/** Reads one text file on this device. A native file input, so that keyboard, speech and phones all know it. */
export function FilePicker({ label, help, accept, inUse, onText, onFail, mostBytes = tenMegabytes }: FilePickerProps) {
  const { messages } = useWords();
  const id = useId();
  const read = async (file: File) => {
    if (file.size > mostBytes) return onFail(file.name);
    try {
      onText(await file.text(), file.name);
    } catch {
      onFail(file.name);
    }
  };
  return (
    <div class="file-picker">
      <label class="patch choice" data-state={inUse ? 'sewn' : 'chalked'} data-cut="1">
        <input
          type="file"
          accept={accept}
          aria-describedby={help ? `${id}-help ${id}-name` : `${id}-name`}
          onChange={(event) => {
            const input = event.currentTarget;
            const file = input.files?.[0];
            if (file) void read(file);
            // The same file may be chosen again after it was mended.
            input.value = '';
          }}
        />
        <span>{label}</span>
      </label>
      <span id={`${id}-name`} class="caption">
        {inUse ?? messages.common.noFile}
      </span>
      {help ? (
        <p id={`${id}-help`} class="caption">
          {help}
        </p>
      ) : null}
    </div>
  );
}
