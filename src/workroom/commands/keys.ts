// Shortcuts as they are written down, pressed and read. "Mod" is the command key where there is one, else control.

export type Keys = string;

interface Pressed {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

/** "Mod+Shift+Z", "?", "T": what was pressed, as it is written down. */
export const keysOf = ({ key, ctrlKey, metaKey, shiftKey, altKey }: Pressed): Keys => {
  const isLetter = /^[a-z]$/i.test(key);
  const named = isLetter ? key.toUpperCase() : key;
  return [
    ...(ctrlKey || metaKey ? ['Mod'] : []),
    ...(altKey ? ['Alt'] : []),
    // a sign such as "?" has its shift in it
    ...(shiftKey && (isLetter || key.length > 1) ? ['Shift'] : []),
    named,
  ].join('+');
};

/** As a person reads it: "Ctrl Shift Z", or with the signs of a keyboard that has them. */
export const keyWords = (keys: Keys, keyboard: 'apple' | 'other'): string =>
  partsOf(keys)
    .map((key) => (keyboard === 'apple' ? (appleSigns[key] ?? key) : (otherNames[key] ?? key)))
    .join(keyboard === 'apple' ? '' : ' ');

/** The sign "+" is a key as well. */
const partsOf = (keys: Keys): readonly string[] => keys.split(/\+(?=.)/);

const keyNames = { ' ': 'Space', ArrowLeft: '←', ArrowRight: '→', ArrowUp: '↑', ArrowDown: '↓' } as const;
const appleSigns: Readonly<Record<string, string>> = { ...keyNames, Mod: '⌘', Shift: '⇧', Alt: '⌥' };
const otherNames: Readonly<Record<string, string>> = { ...keyNames, Mod: 'Ctrl' };

/** While one types, only what is held with a command key is a shortcut. */
export const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable ||
    target instanceof HTMLTextAreaElement ||
    target instanceof HTMLSelectElement ||
    (target instanceof HTMLInputElement && !['checkbox', 'radio', 'button', 'range', 'color'].includes(target.type)));
