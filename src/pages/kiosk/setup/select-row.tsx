import { useId } from 'preact/hooks';

export interface SelectRowProps {
  readonly label: string;
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly onChoose: (value: string) => void;
}

/** One of a list, in the browser's own control. */
export function SelectRow({ label, value, options, onChoose }: SelectRowProps) {
  const id = useId();
  return (
    <div class="setup-field">
      <label class="control-label" for={id}>
        {label}
      </label>
      <select id={id} class="setup-typed" value={value} onChange={({ currentTarget }) => onChoose(currentTarget.value)}>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </div>
  );
}
