// The choices as a plot: cloth across, time up; the longer the line under a mark, the less true its units. Each mark leads to its choice.
import { type CSSProperties, memo } from 'react';
import { hoursText } from '#paper/ways';
import type { WaysPoint, WaysSeen } from '#workroom/compute';
import { useMedia, useQuilt } from '#workroom/room';
import { across, type PlotPlace, type PlotSize, placesFor, scaleOf, ticksIn, underMark, up } from './plot-places.ts';

const sizes: Readonly<Record<'widest' | 'wide' | 'narrow', PlotSize>> = {
  widest: { width: 880, height: 440, edge: { left: 64, top: 34, right: 44, bottom: 56 }, mark: 16 },
  wide: { width: 640, height: 380, edge: { left: 64, top: 34, right: 44, bottom: 56 }, mark: 16 },
  narrow: { width: 340, height: 320, edge: { left: 56, top: 34, right: 34, bottom: 56 }, mark: 18 },
};

const clothSteps = [0.125, 0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500];
const minuteSteps = [1, 2, 5, 10, 15, 30, 60, 120, 240, 600];

export interface WaysPlotOf {
  readonly seen: WaysSeen;
  readonly picked: string | null;
  readonly addressOf: (key: string) => string;
}

/** Of the window: between the job and the units there is then no room for the wide plot, or for the widest. */
const [tooNarrow, notWidest] = ['(max-width: 1230px)', '(max-width: 1480px)'];

export const WaysPlot = memo(({ seen, picked, addressOf }: WaysPlotOf) => {
  const { words } = useQuilt();
  const [isNarrow, isNotWidest] = [useMedia(tooNarrow), useMedia(notWidest)];
  const size = sizes[isNarrow ? 'narrow' : isNotWidest ? 'wide' : 'widest'];
  const isAmong = seen.points.some(({ key }) => key === seen.now.key);
  const all = isAmong ? seen.points : [...seen.points, seen.now];
  const scale = scaleOf(all);
  const places = placesFor(all, size);
  const { width, height, edge } = size;
  return (
    <figure className="ways-plot">
      <div className="ways-plot-sheet" style={{ width, height, '--mark': `${size.mark}px` } as CSSProperties}>
        <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
          <path
            className="ways-axis"
            d={`M${edge.left} ${edge.top - 10}V${height - edge.bottom}H${width - edge.right + 24}`}
          />
          {ticksIn(scale.cloth, clothSteps).map((tick) => (
            <g key={`c${tick}`} className="ways-tick">
              <path d={`M${across(tick, scale, size)} ${height - edge.bottom}v5`} />
              <text x={across(tick, scale, size)} y={height - edge.bottom + 20} textAnchor="middle">
                {words.figure(tick)}
              </text>
            </g>
          ))}
          {ticksIn(scale.minutes, minuteSteps).map((tick) => (
            <g key={`m${tick}`} className="ways-tick">
              <path d={`M${edge.left} ${up(tick, scale, size)}h-5`} />
              <text x={edge.left - 9} y={up(tick, scale, size) + 4} textAnchor="end">
                {clockText(tick)}
              </text>
            </g>
          ))}
          <text className="ways-axis-name" x={width - edge.right + 24} y={height - 12} textAnchor="end">
            all cloth, {words.unit}
          </text>
          <text className="ways-axis-name" x={8} y={14}>
            hours
          </text>
          {places.map((place) => (
            <MarkLines key={place.point.key} place={place} mark={size.mark} />
          ))}
        </svg>
        {places.map(({ point, mark: [x, y] }, i) => (
          <a
            key={point.key}
            className={point.key === seen.now.key ? 'ways-mark is-now' : 'ways-mark'}
            style={{ left: x, top: y }}
            href={addressOf(point.key)}
            aria-current={point.key === picked ? 'true' : undefined}
            aria-label={markLabel(point, i < seen.points.length ? i + 1 : null, words.length)}
          >
            {i < seen.points.length ? i + 1 : '·'}
          </a>
        ))}
      </div>
      <figcaption className="quiet">
        Down and to the left is less work and less cloth. The longer the line under a mark, the further the side of a
        unit may be off. The square mark is the quilt as it is.
      </figcaption>
    </figure>
  );
});

const markLabel = (point: WaysPoint, number: number | null, length: (value: number) => string): string =>
  `${number === null ? 'As it is' : `Choice ${number}`}: ${length(point.cloth)} of cloth, ${hoursText(point.minutes)}, sides within ${length(point.deviation)}`;

const clockText = (minutes: number): string => `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;

/** From where the figures lie to the mark, and how true it is. */
const MarkLines = ({ place, mark }: { readonly place: PlotPlace; readonly mark: number }) => {
  const [[x, y], [mx, my]] = [place.at, place.mark];
  const isMoved = Math.hypot(mx - x, my - y) > 4;
  const line = my + mark + underMark;
  return (
    <g className="ways-lines">
      {isMoved && <path className="ways-leader" d={`M${x} ${y}L${mx} ${my}`} />}
      {isMoved && <circle cx={x} cy={y} r={2.5} />}
      <path
        d={`M${mx - place.off} ${line}H${mx + place.off}M${mx - place.off} ${line - 3}v6M${mx + place.off} ${line - 3}v6`}
      />
    </g>
  );
};
