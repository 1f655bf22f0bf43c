// Beside the machine the screen should stay awake, and show nothing but the step. Where a page may not ask for either, as over plain
// http, the step is large all the same.
import { useEffect } from 'react';

export const useFilledScreen = (isFilled: boolean): void => {
  useEffect(() => {
    if (!isFilled) return;
    let lock: { readonly release: () => Promise<void> } | null = null;
    let isOver = false;
    const wake = async (): Promise<void> => {
      // no browser gives it to a page that is not seen, nor to one over plain http
      if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
      try {
        const given = await navigator.wakeLock.request('screen');
        if (isOver) void given.release();
        else lock = given;
      } catch {
        // refused, as when the battery is low
      }
    };
    void wake();
    document.addEventListener('visibilitychange', wake);
    return () => {
      isOver = true;
      if (document.fullscreenElement !== null) void document.exitFullscreen();
      document.removeEventListener('visibilitychange', wake);
      void lock?.release();
    };
  }, [isFilled]);
};

/** Only in answer to a hand; where the browser has no such thing, or refuses, the step fills its window. */
export const fillScreen = (): void => {
  const whole = document.documentElement;
  if (typeof whole.requestFullscreen === 'function') whole.requestFullscreen().catch(() => undefined);
};
