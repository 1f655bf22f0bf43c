// The page's own colours for what a canvas writes beside the cloth: as the theme has them (page/ground.css).
import { useMedia, usePreferences, useRoom } from '#workroom/room';

export interface GroundColours {
  readonly soft: string;
  /** What pales all that is not lit. */
  readonly pale: string;
}

const colours = {
  light: { soft: '#6a6458', pale: '#f6f3ec' },
  dark: { soft: '#b3aa99', pale: '#1c1a17' },
} as const;

export const useGroundColours = (): GroundColours => {
  const { theme } = usePreferences(useRoom().preferences);
  const isDark = useMedia('(prefers-color-scheme: dark)');
  return colours[theme === 'system' ? (isDark ? 'dark' : 'light') : theme];
};
