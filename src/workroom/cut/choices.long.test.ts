import assert from 'node:assert/strict';
import { before, describe, it } from 'node:test';
import { planQuilt, type QuiltPlan } from '#craft';
import type { QuiltDocument } from '#craft/design';
import type { IntegerSolver } from '#craft/strips';
import { example } from '#documents';
import { differenceText } from '#paper/pages';
import { openSolver } from '#solver';
import { weigh } from '#workroom/asking';
import { type Choice, clothChoices, quiltChoices, takeChange } from './choices.ts';

const changed = (document: QuiltDocument, apply: (draft: QuiltDocument) => void): QuiltDocument => {
  const draft = structuredClone(document);
  apply(draft);
  return draft;
};

describe('what a choice is said to come to is what the quilt then comes to', () => {
  let solver: IntegerSolver;
  before(async () => {
    solver = await openSolver();
  });
  const planned = (document: QuiltDocument): QuiltPlan => {
    const plan = planQuilt(document, { solver });
    assert.ok(plan.ok, plan.ok ? '' : plan.problems.map(({ code, path }) => `${code} ${path}`).join());
    return plan.value;
  };
  const weighed = (document: QuiltDocument, of: { readonly cloth: string; readonly choices: readonly Choice[] }) => {
    const variants = of.choices.map(({ id, apply }) => ({ id, document: changed(document, apply) as never }));
    return [...weigh({ plan: planned(document), quick: variants, cloth: of.cloth, variants: [], solver })];
  };

  it('of the throw with prices, for a border’s cloth and for all cloths', () => {
    const document = example('harvest-home-throw');
    document.currency = 'EUR';
    for (const fabric of document.fabrics) fabric.price = 10;
    const narrower: Choice = {
      id: 'narrower',
      words: '',
      what: '',
      isQuick: false,
      apply: (draft) => {
        for (const fabric of draft.fabrics) if (fabric.id === 'plum') fabric.usableWidth = '31';
      },
    };
    const choices = [...clothChoices(document, 'slate'), ...quiltChoices(document), narrower];
    const all = weighed(document, { cloth: 'slate', choices });
    assert.equal(all.length, choices.length + all.filter(({ kind }) => kind === 'cloth').length);
    const plan = planned(document);
    for (const one of all) {
      if (one.kind === 'variant') {
        const choice = choices.find(({ id }) => id === one.id) ?? assert.fail(one.id);
        const then = planned(changed(document, choice.apply));
        const { cloth, cost } = differenceText(plan, then);
        assert.deepEqual([one.difference.cloth, one.difference.cost], [cloth, cost], one.id);
      } else if (one.kind === 'cloth') {
        const then = planned(changed(document, (draft) => takeChange(draft, one)));
        const slate = then.fabrics.find(({ id }) => id === 'slate');
        assert.deepEqual(
          [slate?.buy.amount, slate?.buy.unit],
          [one.change.after.amount, one.change.after.unit],
          one.words,
        );
      } else assert.fail(one.why);
    }
    // by hand: 10 a yard, an eighth of a yard is 1.25
    const turning = all.find((one) => one.kind === 'variant' && one.id === 'turning slate');
    assert.ok(turning?.kind === 'variant');
    assert.deepEqual(
      [turning.difference.cloth, turning.difference.cost].map((text) => text.replaceAll('\u00a0', ' ')),
      ['⅛ yd more of G', '1.25 EUR more'],
    );
  });

  it('of diamonds that are cut from strips at an angle', () => {
    const throwQuilt = example('harvest-home-throw');
    const star: QuiltDocument = {
      ...throwQuilt,
      blocks: [
        {
          id: 'star',
          from: 'lemoyne-star',
          size: '12',
          colourings: { default: { light: 'oat', dark: 'slate', medium: 'plum' } },
        },
      ],
      top: { rows: [[{ block: 'star' }, { block: 'star' }]] },
    };
    const choices = [...clothChoices(star, 'slate'), ...quiltChoices(star)];
    const plan = planned(star);
    assert.ok(plan.fabrics.some(({ pieces }) => pieces.some(({ way }) => way !== null)));
    for (const one of weighed(star, { cloth: 'slate', choices })) {
      if (one.kind !== 'variant') continue;
      const choice = choices.find(({ id }) => id === one.id) ?? assert.fail(one.id);
      assert.equal(one.difference.cloth, differenceText(plan, planned(changed(star, choice.apply))).cloth, one.id);
    }
  });

  it('a step of the shop is not offered where it is taken already, however it is written', () => {
    const offered = (step?: string): readonly string[] =>
      quiltChoices({ ...example('harvest-home-throw'), cutting: step === undefined ? {} : { step } }).flatMap(
        ({ id, words }) => (id.startsWith('step ') ? [words.replaceAll('\u00a0', ' ')] : []),
      );
    assert.deepEqual(offered(), ['Sold by the ¼ yd', 'Sold by the ½ yd', 'Sold by the yard']);
    // by hand: an eighth of a yard is 0.125 yd, or 4 1/2 in
    assert.deepEqual(offered('0.125 yd'), offered());
    assert.deepEqual(offered('4 1/2 in'), offered());
    assert.equal(offered('0.1 m').length, 4);
  });

  it('and a choice that was taken offers the way back', () => {
    const document = changed(example('harvest-home-throw'), (draft) => {
      for (const { id, apply } of quiltChoices(draft))
        if (['squaring', 'shrinkage', 'layout', 'fold'].includes(id)) apply(draft);
    });
    assert.deepEqual(document.cutting, { step: '1/8 yd', squaring: '0', shrinkage: 0.05, layout: 'easy', fold: true });
    const back = changed(document, (draft) => {
      for (const { id, apply } of quiltChoices(document)) if (!id.startsWith('step')) apply(draft);
    });
    assert.deepEqual(back.cutting, { step: '1/8 yd' });
    const [keep] = clothChoices(example('harvest-home-throw'), 'slate');
    const kept = changed(example('harvest-home-throw'), (draft) => keep?.apply(draft));
    assert.equal(kept.fabrics.find(({ id }) => id === 'slate')?.turning, 'none');
    const [leave] = clothChoices(kept, 'slate');
    assert.deepEqual(
      changed(kept, (draft) => leave?.apply(draft)),
      example('harvest-home-throw'),
    );
  });
});
