// The steps of a block or of the top, each with what it should measure and a field for what it does. Those of a large top are folded
// away by row, section and border.
import { useEffect, useRef, useState } from 'react';
import type { SizesSeen, WrittenSize } from '#workroom/compute';
import { SizeField } from './size-field.tsx';
import { type SizeGroup, type SizeStep, sizeGroups, stepsText } from './size-groups.ts';

export interface SizesFormOf {
  readonly seen: SizesSeen;
  readonly sizes: readonly WrittenSize[];
  /** The step of this entry where one was last. */
  readonly here: number | null;
  readonly onTake: (of: { readonly step: number; readonly way: 'across' | 'down'; readonly text: string }) => void;
}

/** Our own figure: some three screens of fields. */
const mostUnfolded = 40;

export const SizesForm = (of: SizesFormOf) => {
  const groups = sizeGroups(of.seen.steps);
  const isFolded = groups.length > 1 && of.seen.steps.length > mostUnfolded;
  return (
    <div className="sew-wrong-groups">
      {groups.map((group) => {
        const key = `${group.place} ${group.steps[0]?.number}`;
        return isFolded ? <Folded key={key} {...of} group={group} /> : <Unfolded key={key} {...of} group={group} />;
      })}
    </div>
  );
};

interface GroupOf extends SizesFormOf {
  readonly group: SizeGroup;
}

const Unfolded = (of: GroupOf) => (
  <section className="sew-wrong-group" aria-label={of.group.place === '' ? undefined : of.group.place}>
    {of.group.place !== '' && <h3>{of.group.place}</h3>}
    <StepRows {...of} />
  </section>
);

/** Open at first where one comes from, and where something is written. */
const Folded = (of: GroupOf) => {
  const { group, sizes, here } = of;
  const isHere = group.steps.some(({ number }) => number === here);
  const own = sizes.filter(({ step }) => group.steps.some(({ number }) => number === step)).length;
  const [isOpen, setOpen] = useState(isHere || own > 0);
  const details = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (isHere) details.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'center' });
  }, [isHere]);
  return (
    <details
      ref={details}
      className="sew-wrong-folded"
      open={isOpen}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        <strong>{group.place}</strong> <span className="sew-wrong-numbers">{stepsText(group.steps)}</span>
        {own > 0 && <span className="sew-wrong-numbers"> · {own} written down</span>}
      </summary>
      {isOpen && <StepRows {...of} />}
    </details>
  );
};

const StepRows = ({ seen, sizes, here, onTake, group }: GroupOf) => (
  <ol className="sew-wrong-steps">
    {group.steps.map((step) => (
      <StepRow
        key={step.number}
        step={step}
        isHere={step.number === here}
        own={sizes.find((size) => size.step === step.number)}
        problem={seen.problems.find((problem) => problem.step === step.number)}
        onTake={onTake}
      />
    ))}
  </ol>
);

interface StepRowOf extends Pick<SizesFormOf, 'onTake'> {
  readonly step: SizeStep;
  readonly isHere: boolean;
  readonly own: WrittenSize | undefined;
  readonly problem: SizesSeen['problems'][number] | undefined;
}

const StepRow = ({ step: { number, heading, across, down }, isHere, own, problem, onTake }: StepRowOf) => {
  const problemId = `size-problem-${number}`;
  const field = (way: 'across' | 'down', name: string, should: string) => (
    <SizeField
      label={`${name} after step ${number}`}
      name={name}
      should={should}
      own={own?.[way] ?? ''}
      problemId={problem === undefined ? null : problemId}
      onTake={(text) => onTake({ step: number, way, text })}
    />
  );
  return (
    <li className={problem === undefined ? undefined : 'has-problem'} aria-current={isHere ? 'step' : undefined}>
      <span className="sew-wrong-step">
        <strong>{number}</strong> {heading}
      </span>
      {across !== '' && field('across', 'Width', across)}
      {down !== '' && field('down', 'Height', down)}
      {problem !== undefined && (
        <span className="field-problem" id={problemId} role="alert">
          ◆ {problem.what} {problem.mend}
        </span>
      )}
    </li>
  );
};
