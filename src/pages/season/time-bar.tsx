import { useMemo } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import type { Formats } from '../../language/formats.ts';
import type { Messages } from '../../language/messages/en.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { dayAt, type StationSpan, stepOn } from '../../model/timeline.ts';
import type { Moment } from '../../statechart/runner.ts';
import type { Speed } from '../../statechart/season-machine.ts';
import { Ribbon } from '../../ui/ribbon.tsx';
import { fieldDayOn } from './pictures/field-plant.ts';

export interface TimeBarProps {
  readonly season: Season;
  readonly span: StationSpan;
  readonly moment: Moment;
  readonly playing: boolean;
  readonly speed: Speed;
  readonly onSeek: (step: number) => void;
  readonly onPlay: () => void;
  readonly onPause: () => void;
  readonly onStep: () => void;
  readonly onStepStation: () => void;
  readonly onSpeed: (speed: Speed) => void;
}

/** What happened when in the growing season, for the marks on the ribbon; the weightiest first. */
function eventsOf(season: Season, messages: Messages, formats: Formats) {
  const { field } = season;
  const words = messages.scenes.ribbon.events;
  const named: readonly [keyof typeof words, number | null][] = [
    ['firstFlower', field.events.firstFlower],
    ['firstOpenBoll', field.events.firstOpenBoll],
    ['harvest', field.harvestDays[0] ?? null],
    ['cutOut', field.events.cutOut],
    ['emerged', field.events.emerged],
    ['firstSquare', field.events.firstSquare],
    ['harvestAid', field.events.harvestAid],
    ['planted', field.plantedDay],
  ];
  return named.flatMap(([key, day]) =>
    day === null ? [] : [{ at: day, label: words[key], dateText: formats.day(day) }],
  );
}

/** Heat units to a stitch of the ribbon. */
const heatPerStitch = 100;

const clothOf = ({ field }: Season) => ({
  heatPerStitch,
  days: field.days.map((day) => ({
    at: day.dayOfYear,
    heatSum: day.dd60SincePlanting,
    rainInches: day.rainInches,
    openShare: day.openPercent / 100,
  })),
});

/** The ribbon: the growing season by the day, or the work of a station step by step. */
export function TimeBar({ season, span, moment, playing, speed, ...on }: TimeBarProps) {
  const { messages, formats } = useWords();
  const words = messages.scenes.ribbon;
  const cloth = useMemo(() => clothOf(season), [season]);
  const inField = moment.station === 'planting' || moment.station === 'bloom' || moment.station === 'boll';
  const shared = {
    playing,
    speed,
    onPlay: on.onPlay,
    onPause: on.onPause,
    onStep: on.onStep,
    onStepStation: on.onStepStation,
    onSpeed: on.onSpeed,
  };
  if (!inField) {
    return (
      <Ribbon
        start={0}
        end={moment.steps}
        now={moment.step}
        nowText={fill(messages.readings.workOf, {
          step: formats.count(moment.step),
          steps: formats.count(moment.steps),
        })}
        ticks={[]}
        events={[]}
        onScrub={on.onSeek}
        {...shared}
      />
    );
  }
  const today = dayAt(span, moment.step);
  const fieldDay = fieldDayOn(season.field, today);
  const last = season.field.days.at(-1)?.dayOfYear ?? span.toDay;
  const first = season.field.plantedDay;
  return (
    <Ribbon
      start={first}
      end={last}
      now={today}
      nowText={fill(words.day, { day: formats.count(today - first), date: formats.day(today) })}
      detail={fill(words.today, {
        heat: formats.count(fieldDay.dd60SincePlanting),
        stitch: formats.count(heatPerStitch),
        rain: formats.length(fieldDay.rainInches).text,
        open: formats.percent(fieldDay.openPercent, 0),
      })}
      cloth={cloth}
      ticks={formats.monthStarts
        .filter((day) => day > first && day < last)
        .map((day) => ({ at: day, label: formats.monthShort(day) }))}
      events={eventsOf(season, messages, formats)}
      onScrub={(day) => on.onSeek(stepOn(span, day))}
      {...shared}
    />
  );
}
