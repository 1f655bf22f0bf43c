// A length, written as makers write it: "2 1/2", "2½", "6 cm", in the unit that she likes.
import { parseLength, type Sign, type Unit } from '#craft/measure';
import { useQuilt } from '#workroom/room';
import { lengthShown, lengthTaken } from './length-text.ts';
import { WrittenField } from './written-field.tsx';

export interface LengthFieldOf {
  readonly label: string;
  /** As the document has it. */
  readonly value: string | number;
  readonly unit: Unit;
  readonly sign?: Sign;
  readonly onChange: (written: string) => void;
}

const isNo: Readonly<Record<Sign, string>> = {
  positive: 'not a length above zero',
  'zero-or-more': 'neither a length nor 0',
  any: 'not a length',
};

export const LengthField = ({ label, value, unit, sign = 'positive', onChange }: LengthFieldOf) => {
  const liked = useQuilt().words.unit;
  return (
    <WrittenField
      label={label}
      unit={liked}
      own={lengthShown(value, { unit, liked })}
      wanted={`This is ${isNo[sign]}. Write it like ${liked === 'in' ? '2 1/2 or 2½' : '6.5'}.`}
      onTake={(written) => {
        const taken = lengthTaken(written, { unit, liked });
        const isRead = parseLength(taken, { unit, sign }).ok;
        if (isRead) onChange(taken);
        return isRead;
      }}
    />
  );
};
