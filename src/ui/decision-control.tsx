import { decisionQuantity } from '../language/decision-quantity.ts';
import { useWords } from '../language/words.ts';
import type { Decision } from '../model/decisions.ts';
import type { StationId } from '../model/station.ts';
import { ChoiceRow } from './choice-row.tsx';
import { RulerSlider } from './ruler-slider.tsx';
import { Switch } from './switch.tsx';

export interface DecisionControlProps {
  readonly station: StationId;
  /** The decision's key in its station. */
  readonly decisionKey: string;
  /** Its row in the decision table. */
  readonly decision: Decision;
  readonly value: number | string | boolean;
  readonly onDecide: (value: number | string | boolean) => void;
  /** Options that make no sense here, for instance a roller-type cleaner behind saws; all are shown if absent. */
  readonly options?: readonly string[];
  readonly published?: { readonly low: number; readonly high: number };
  readonly disabled?: boolean;
}

interface ControlWords {
  readonly label: string;
  readonly help: string;
  readonly options?: Readonly<Record<string, string>>;
}

// Up to this many whole steps a number is shown as pieces to choose, not as a ruler.
const mostPieces = 5;

/** The control for any decision of the season, from its row in the table. */
export function DecisionControl(props: DecisionControlProps) {
  const { station, decisionKey, decision, value, onDecide, published, disabled = false } = props;
  const { messages, formats } = useWords();
  const words = (messages.decisions[station] as Readonly<Record<string, ControlWords>>)[decisionKey];
  if (!words) return null;
  const { label, help } = words;
  if (decision.kind === 'switch') {
    return <Switch label={label} help={help} on={value === true} onChange={onDecide} disabled={disabled} />;
  }
  if (decision.kind === 'choice') {
    const options = (props.options ?? decision.options).map((option) => ({
      value: option,
      label: words.options?.[option] ?? option,
    }));
    return (
      <ChoiceRow
        label={label}
        help={help}
        options={options}
        value={String(value)}
        onChoose={onDecide}
        disabled={disabled}
      />
    );
  }
  const quantityOf = (amount: number) => decisionQuantity(formats, decisionKey, decision, amount);
  const steps = Math.round((decision.high - decision.low) / decision.step) + 1;
  if (steps <= mostPieces) {
    const options = Array.from({ length: steps }, (_, i) => decision.low + i * decision.step).map((amount) => ({
      value: amount,
      label: quantityOf(amount).text,
    }));
    return (
      <ChoiceRow
        label={label}
        help={help}
        options={options}
        value={Number(value)}
        onChoose={onDecide}
        disabled={disabled}
      />
    );
  }
  const months =
    decision.unit === 'dayOfYear'
      ? {
          marks: formats.monthStarts
            .filter((day) => day >= decision.low && day <= decision.high)
            .map((day) => ({ at: day, label: formats.monthShort(day) })),
          smallMarkEvery: 7,
        }
      : {};
  return (
    <RulerSlider
      label={label}
      help={help}
      value={Number(value)}
      low={decision.low}
      high={decision.high}
      step={decision.step}
      quantityOf={quantityOf}
      onChange={onDecide}
      disabled={disabled}
      {...months}
      {...(published ? { published } : {})}
    />
  );
}
