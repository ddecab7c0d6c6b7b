"""Kernels of the day: what a slot does to shelf and fryers, the rule, and looks ahead over it.

Arrays, with i items, k loads, f fryers, t slots, q parts of the day:

* given: sizes (4, i, k: units, cook, recovery, allowed count), may (i, k, f), cost (i, k), holds (i), money
  (i, 3: short, waste, spread), ahead (i, t+1: running sum of the mean), bank (hands, filter every, filter
  slots, filters at once, loads from which a quiet moment is used for a filter turn), windows (f, 2), rush
  (t), power (f + 1, the last is the cap), prior (shape of the day's level, of a product's own level, what a
  slot keeps of what was seen, weight of a promised piece that is missed), turn (money of a filter turn), rule
  (5, q, i: cover, spreads, call, cover and spreads of the fill), part (t: part of the day), span (2, i, f:
  first and last load a fryer may take), cook (i: slots of the longest load), order (f: fryers in the order in
  which they are asked), firm (i, t+1: running sum of promised orders), lead (i: slots before an order from
  which on it is cooked for).
* world: made (i, t), stock (4, i: there, gone, expired, made in all), fryers (4, f: free from, loads since
  filter, product or -1 for a filter turn and load advised before, -2 for none), slots (2, t: hands, filters),
  watts (t), mind (3, i: level, need, slot up to which no more goes in).
* belief (2, i + 1): seen and expected so far, over their spread; of all products, then of each.
"""

from __future__ import annotations

import numpy as np

from frywright.physics.kernels import inlined, njit

FILTER, NOTHING = -1, -2
MOST_SLOTS = 72  # longest cook or hold: six hours in slots of five minutes
TRIED_PRODUCTS, FEW_PATHS, MANY_PATHS = 4, 48, 128
RACES = ((8, 6, 3), (12, 6, 3), (24, 8, 3))  # by paths: those all actions meet, actions kept then, later
BUSY_LEVEL, SELLS_FRAC = 1.5, 0.25  # level at which, and share of, late loads should sell (own choice)
WAITS = (1, 2, 4)  # slots for which leaving a fryer empty and its product out is tried
LEFT_FRAC = 0.2  # of its sale, worth of a piece at a look's end: a later load serves most guests (own choice)
NEAR_SLOTS = 12  # a filter turn is brought forward where a rush comes within so many slots (own choice)


@njit(cache=True, nogil=True)
def fresh(given):  # type: ignore[no-untyped-def]
    """An empty kitchen."""
    sizes, ahead, windows = given[0], given[5], given[7]
    n_item, n_slot, n_fryer = sizes.shape[1], ahead.shape[1] - 1, len(windows)
    fryers = np.zeros((4, n_fryer), dtype=np.int64)
    fryers[0], fryers[2] = windows[:, 0], NOTHING
    return (
        np.zeros((n_item, n_slot), dtype=np.int64),
        np.zeros((4, n_item), dtype=np.int64),
        fryers,
        np.zeros((2, n_slot), dtype=np.int64),
        np.zeros(n_slot),
        np.ones((3, n_item)) * np.array([[1.0], [1.0], [-1.0]]),
    )


@inlined
def _copy(world, into, first, last):  # type: ignore[no-untyped-def]
    """Copy what a rollout from slot ``first`` to ``last`` can touch."""
    for i in range(world[0].shape[0]):
        for t in range(first, last):
            into[0][i, t] = world[0][i, t]
        into[1][3, i] = world[1][3, i]
        for n in range(3):
            into[1][n, i], into[5][n, i] = world[1][n, i], world[5][n, i]
    for f in range(world[2].shape[1]):
        into[2][0, f], into[2][1, f] = world[2][0, f], world[2][1, f]
    for t in range(first, last):
        into[3][0, t], into[3][1, t], into[4][t] = world[3][0, t], world[3][1, t], world[4][t]


@inlined
def age(t, world, given, part):  # type: ignore[no-untyped-def]
    """What comes out of the oil in a slot, and what has been held too long."""
    made, stock, holds, money = world[0], world[1], given[3], given[4]
    for i in range(made.shape[0]):
        stock[0, i] += made[i, t]
        if t >= holds[i]:
            stock[2, i] += made[i, t - holds[i]]
        if stock[2, i] > stock[1, i]:
            lost = stock[2, i] - stock[1, i]
            part[5] += lost
            part[2] += money[i, 1] * lost
            stock[1, i] = stock[2, i]


@inlined
def believe(belief, world, given):  # type: ignore[no-untyped-def]
    """Level of every product: the day's, times its own, both gamma."""
    prior, mind = given[10], world[5]
    day = (prior[0] + belief[0, 0]) / (prior[0] + belief[1, 0])
    for i in range(mind.shape[1]):
        mind[0, i] = day * (prior[1] + belief[0, i + 1]) / (prior[1] + day * belief[1, i + 1])


@inlined
def sell(t, asked, world, belief, given, part):  # type: ignore[no-untyped-def]
    """Serve a slot's demand from the shelf, oldest first, and learn from what is seen of it.

    Where the shelf was empty only the sale is seen; the rest is taken as expected.
    """
    stock, money, ahead, firm, keep, mind = world[1], given[4], given[5], given[17], given[10][2], world[5]
    belief[0, 0], belief[1, 0] = keep * belief[0, 0], keep * belief[1, 0]
    for i in range(stock.shape[1]):
        wanted = asked[i, t]
        sale = min(wanted, stock[0, i] - stock[1, i])
        stock[1, i] += sale
        part[3], part[4] = part[3] + sale, part[4] + wanted - sale
        part[1] += money[i, 0] * (wanted - sale)
        promised = firm[i, t + 1] - firm[i, t]
        part[1] += (given[10][3] - 1.0) * money[i, 0] * max(0, promised - sale)
        expected, seen = ahead[i, t + 1] - ahead[i, t], float(max(0, sale - promised))
        if wanted > sale:
            seen = max(seen, mind[0, i] * expected)
        belief[0, i + 1] = keep * belief[0, i + 1] + seen / money[i, 2]
        belief[1, i + 1] = keep * belief[1, i + 1] + expected / money[i, 2]
        belief[0, 0] += seen / money[i, 2]
        belief[1, 0] += expected / money[i, 2]
    believe(belief, world, given)


@inlined
def may_filter(f, t, world, given):  # type: ignore[no-untyped-def]
    """Whether a filter turn can start: fryer at heat, hands, no rush, not too many at once."""
    bank, windows, rush = given[6], given[7], given[8]
    last = t + bank[2]
    if world[3][0, t] >= bank[0] or not windows[f, 0] <= t < windows[f, 1] or last > len(rush):
        return False
    clear = True
    for s in range(t, last):
        clear = clear and not rush[s] and world[3][1, s] < bank[3]
    return clear


@inlined
def may_drop(f, t, i, k, world, given):  # type: ignore[no-untyped-def]
    """Whether a load can go in: fryer at heat and filtered, hands at drop and lift, power."""
    sizes, may, bank, windows, power = given[0], given[1], given[6], given[7], given[9]
    if not may[i, k, f] or world[2][1, f] >= bank[1]:
        return False
    lift = t + sizes[1, i, k]
    if lift >= world[0].shape[1] or t < windows[f, 0] or lift >= windows[f, 1]:
        return False
    if world[3][0, t] >= bank[0] or world[3][0, lift] >= bank[0]:
        return False
    if power[-1] < np.inf:
        for s in range(t, min(lift + sizes[2, i, k], len(world[4]))):
            if world[4][s] + power[f] > power[-1]:
                return False
    return True


@inlined
def start(f, t, i, k, world, given, part):  # type: ignore[no-untyped-def]
    """Drop (i >= 0) or filter (i = -1) in a fryer; false, and nothing done, where a rule forbids it."""
    sizes, bank, power = given[0], given[6], given[9]
    if i == FILTER:
        if not may_filter(f, t, world, given):
            return False
        world[2][0, f], world[2][1, f] = t + bank[2], 0
        for s in range(t, t + bank[2]):
            world[3][1, s] += 1
        world[3][0, t] += 1
        part[0] += given[11]
        return True
    if not may_drop(f, t, i, k, world, given):
        return False
    lift = t + sizes[1, i, k]
    world[3][0, t] += 1
    world[3][0, lift] += 1
    world[0][i, lift] += sizes[0, i, k]
    world[1][3, i] += sizes[0, i, k]
    world[2][0, f], world[2][1, f] = lift + sizes[2, i, k], world[2][1, f] + 1
    if k < given[14][1, i, f]:
        world[5][2, i] = t
    if power[-1] < np.inf:
        for s in range(t, min(lift + sizes[2, i, k], len(world[4]))):
            world[4][s] += power[f]
    part[0] += given[2][i, k]
    return True


@inlined
def _lack(i, t, lift, aim, world, given):  # type: ignore[no-untyped-def]
    """Units that lack at a lift against what will be asked for from there over ``aim`` (cover, spreads)."""
    made, stock, holds, ahead, level = world[0], world[1], given[3], given[5], world[5][0, i]
    firm, n_slot = given[17], given[5].shape[1] - 1
    lives, old = stock[3, i] - stock[1, i], lift - holds[i]  # there or in the oil, less what will be too old
    if old >= 0:
        passed = stock[2, i]
        for s in range(max(0, t - holds[i] + 1), old + 1):
            passed += made[i, s]
        if passed > stock[1, i]:
            lives -= passed - stock[1, i]
    until = level * (ahead[i, lift] - ahead[i, t]) + firm[i, lift] - firm[i, t]
    end, spreads, reach = min(lift + int(aim[0]), n_slot), aim[1], max(lift, min(lift + given[18][i], n_slot))
    promised = float(firm[i, reach] - firm[i, lift])
    if promised > 0.0:  # guests take from the shelf until the order is due
        end, spreads, promised = max(end, reach), max(spreads, 1.0), promised + 0.5 * given[0][0, i, 0]
    expected = level * (ahead[i, end] - ahead[i, lift])
    return promised + expected + spreads * np.sqrt(given[4][i, 2] * expected) - max(0.0, lives - until)


@inlined
def _need(i, t, world, given):  # type: ignore[no-untyped-def]
    """What a product lacks below its call, in smallest loads; 0 where it does not call."""
    rule, q, lift = given[12], given[13][t], t + given[15][i]
    need = 0.0
    if lift < world[0].shape[1]:
        lack = _lack(i, t, lift, (rule[0, q, i], rule[1, q, i]), world, given) / given[0][0, i, 0]
        if lack >= rule[2, q, i]:
            need = lack
    world[5][1, i] = need
    return need


@inlined
def needs(t, world, given):  # type: ignore[no-untyped-def]
    """Needs of all products into the mind; whether any calls."""
    calls = False
    for i in range(world[0].shape[0]):
        calls = _need(i, t, world, given) > 0.0 or calls
    return calls


@inlined
def _filter_now(f, t, calls, world, given):  # type: ignore[no-untyped-def]
    """Whether the rule filters: due, or half due in a quiet moment before a rush, or nearly due in any."""
    bank, rush, since = given[6], given[8], world[2][1, f]
    wanted = since >= bank[1]
    if not wanted and not calls:
        wanted = since >= bank[4]
        for s in range(t, min(t + NEAR_SLOTS, len(rush))):
            wanted = wanted or (rush[s] and 2 * since >= bank[1])
    return wanted and may_filter(f, t, world, given)


@inlined
def sells(i, k, t, world, given):  # type: ignore[no-untyped-def]
    """Whether of a load that would stand until the close a quarter sells if half as many again come."""
    sizes, ahead, firm, close = given[0], given[5], given[17], world[0].shape[1]
    if t + sizes[1, i, k] + given[3][i] < close:
        return True
    wanted = BUSY_LEVEL * (ahead[i, close] - ahead[i, t]) + firm[i, close] - firm[i, t]
    return wanted - (world[1][3, i] - world[1][1, i]) >= SELLS_FRAC * sizes[0, i, k]


@inlined
def rule_action(f, t, calls, world, given):  # type: ignore[no-untyped-def]
    """What the rule does with an idle fryer: (product, load), (-1, 0) filter, (-2, 0) nothing; of the
    products that call the one that lacks most goes in, filled up to its level.
    """
    sizes, may, rule, q, span = given[0], given[1], given[12], given[13][t], given[14]
    choice, size, best = NOTHING, 0, 0.0
    if world[2][0, f] <= t and world[3][0, t] < given[6][0] and given[7][f, 0] <= t < given[7][f, 1]:
        if calls and world[2][1, f] < given[6][1]:
            for i in range(sizes.shape[1]):
                need = world[5][1, i]
                if need > best and span[0, i, f] >= 0 and world[5][2, i] < t:
                    lift = t + sizes[1, i, span[1, i, f]]
                    if lift < world[0].shape[1]:
                        lack = _lack(i, t, lift, (rule[3, q, i], rule[4, q, i]), world, given)
                        lack = max(lack, need * sizes[0, i, 0])
                        pick = span[0, i, f]
                        for k in range(span[0, i, f], span[1, i, f] + 1):
                            if may[i, k, f] and sizes[0, i, pick] < lack:
                                pick = k
                        if may_drop(f, t, i, pick, world, given) and sells(i, pick, t, world, given):
                            best, choice, size = need, i, pick
        if choice == NOTHING and _filter_now(f, t, calls, world, given):
            choice = FILTER
    return choice, size


@inlined
def _rest_of_slot(t, n0, world, given, part):  # type: ignore[no-untyped-def]
    """The rule for every fryer from the ``n0``-th asked on."""
    calls, known = False, False
    for n in range(n0, world[2].shape[1]):
        f = given[16][n]
        if world[2][0, f] <= t and not known:
            calls, known = needs(t, world, given), True
        if world[2][0, f] <= t and (calls or 2 * world[2][1, f] >= given[6][1]):
            i, k = rule_action(f, t, calls, world, given)
            if i > NOTHING and start(f, t, i, k, world, given, part) and i >= 0:
                _need(i, t, world, given)


@inlined
def go_on(where, asked, world, belief, given, part):  # type: ignore[no-untyped-def]
    """Play by the rule from slot ``where[0]``, the ``where[1]``-th fryer asked, up to slot ``where[2]``."""
    t0, n0, t1 = where
    for t in range(t0, t1):
        if t > t0:
            age(t, world, given, part)
        _rest_of_slot(t, n0 if t == t0 else 0, world, given, part)
        sell(t, asked, world, belief, given, part)
    if t1 == world[0].shape[1]:
        close(world, given, part)


@inlined
def close(world, given, part):  # type: ignore[no-untyped-def]
    """Throw away what is left on the shelf."""
    for i in range(world[0].shape[0]):
        left = world[1][0, i] - world[1][1, i]
        part[5] += left
        part[2] += given[4][i, 1] * left


@njit(cache=True, nogil=True)
def imagine(t0, t1, count, belief, mean, given, seed):  # type: ignore[no-untyped-def]
    """Rests of the day (path, item, slot) drawn from what is believed of the levels of day and products."""
    prior = given[10]
    np.random.seed(seed)
    paths = np.zeros((count, mean.shape[0], mean.shape[1]), dtype=np.int64)
    shape, scale = prior[0] + belief[0, 0], 1.0 / (prior[0] + belief[1, 0])
    for n in range(count):
        level = np.random.gamma(shape, scale)
        for i in range(mean.shape[0]):
            wide = given[4][i, 2] - 1.0
            own = np.random.gamma(prior[1] + belief[0, i + 1]) / (prior[1] + shape * scale * belief[1, i + 1])
            for t in range(t0, t1):
                paths[n, i, t] = given[17][i, t + 1] - given[17][i, t]
                expected = level * own * mean[i, t]
                if expected <= 0.0:
                    continue
                if wide > 1e-6:
                    expected = np.random.gamma(expected / wide, wide)
                paths[n, i, t] += np.random.poisson(expected)
    return paths


@inlined
def _left(t1, world, given):  # type: ignore[no-untyped-def]
    """What stands there at a horizon before the close: a part of its sale where it is asked for in time."""
    money, ahead, firm, left = given[4], given[5], given[17], 0.0
    for i in range(world[0].shape[0]):
        stay, end = float(world[1][3, i] - world[1][1, i]), min(t1 + given[3][i], world[0].shape[1])
        useful = min(stay, world[5][0, i] * (ahead[i, end] - ahead[i, t1]) + firm[i, end] - firm[i, t1])
        left += money[i, 1] * (stay - useful) - LEFT_FRAC * money[i, 0] * useful
    return left


@njit(cache=True, nogil=True, error_model="numpy", _nrt=False)
def _try(where, action, dreams, worlds, beliefs, given, out):  # type: ignore[no-untyped-def]
    """Cost of one action in ``where`` (place in the order, slot, horizon's end, first and last path), the
    rest by the rule; infinite where a rule of the kitchen forbids it. (-2, d, i) leaves it empty for d slots
    and keeps product i out of every fryer as long: the next idle one would take it at once.
    """
    (n, t, t1, low, high), (world, scratch), (belief, known), (part, cost) = where, worlds, beliefs, out
    f = given[16][n]
    for path in range(low, high):
        _copy(world, scratch, max(0, t - MOST_SLOTS), min(t1 + MOST_SLOTS, world[0].shape[1]))
        part[:] = 0.0
        if action[0] == NOTHING:
            scratch[2][0, f] = max(scratch[2][0, f], t + action[1])
            if action[2] >= 0:
                scratch[5][2, action[2]] = t + action[1] - 1
        elif not start(f, t, action[0], action[1], scratch, given, part):
            cost[path] = np.inf
            continue
        for i in range(belief.shape[1]):
            known[0, i], known[1, i] = belief[0, i], belief[1, i]
        go_on((t, n + 1, t1), dreams[path], scratch, known, given, part)
        cost[path] = part[0] + part[1] + part[2]
        if t1 < world[0].shape[1]:
            cost[path] += _left(t1, scratch, given)


@njit(cache=True, nogil=True)
def _candidates(f, t, world, base, given, out):  # type: ignore[no-untyped-def]
    """Actions worth a try in an idle fryer, the rule's own first; returns how many."""
    sizes, rule, q = given[0], given[12], given[13][t]
    out[0, 0], out[0, 1] = base
    count = 1
    for wait in WAITS:
        if base[0] != NOTHING or wait > 1:
            out[count, 0], out[count, 1] = NOTHING, wait
            count += 1
    if base[0] != FILTER and 2 * world[2][1, f] >= given[6][1] and may_filter(f, t, world, given):
        out[count, 0], out[count, 1] = FILTER, 0
        count += 1
    need = np.full(sizes.shape[1], -np.inf)
    for i in range(sizes.shape[1]):
        lift = t + given[15][i]
        if lift < world[0].shape[1]:
            need[i] = _lack(i, t, lift, (rule[0, q, i], rule[1, q, i]), world, given) / sizes[0, i, 0]
    tried = 0
    for i in np.argsort(-need):
        fits = False
        for k in range(sizes[3, i, 0]):  # no second load beside one that could have been larger
            if world[5][2, i] < t and may_drop(f, t, i, k, world, given) and sells(i, k, t, world, given):
                fits = True
                if i != base[0] or k != base[1]:
                    out[count, 0], out[count, 1] = i, k
                    count += 1
        tried += fits
        if tried >= TRIED_PRODUCTS:
            break
    return count


@njit(cache=True, nogil=True)
def rollout(where, dreams, world, belief, given, scratch):  # type: ignore[no-untyped-def]
    """What to do in an idle fryer: what was advised before, else the rule's own action, unless another is
    cheaper on imagined rests of the day by ``z`` standard errors. What it waits with goes in nowhere.

    ``where`` is (place in the order, slot, horizon, z). Every candidate meets a few paths first; the best few
    meet them all. Returns product, load, mean gain over that, its error.
    """
    (n, t, horizon, z), f = where, given[16][where[0]]
    believe(belief, world, given)
    base, i, k = rule_action(f, t, needs(t, world, given), world, given), world[2][2, f], world[2][3, f]
    fits = i >= 0 and world[5][2, i] < t and may_drop(f, t, i, k, world, given)
    if fits or (i == FILTER and may_filter(f, t, world, given)):
        base = (i, k)
    actions = np.empty((5 + given[1].shape[0] * given[1].shape[1], 2), dtype=np.int64)
    count = _candidates(f, t, world, base, given, actions)
    paths, t1 = len(dreams), min(t + horizon, world[0].shape[1])
    cost, part, known = np.zeros((count, paths)), np.zeros(6), np.zeros_like(belief)
    gain, alive = np.full(count, -np.inf), np.ones(count, dtype=np.bool_)
    first, most, least = RACES[int(paths > FEW_PATHS) + int(paths > MANY_PATHS)]
    low, high = 0, min(paths, first)
    while low < paths:
        for c in range(count):
            if alive[c]:
                action, look = (actions[c, 0], actions[c, 1], base[0]), (n, t, t1, low, high)
                _try(look, action, dreams, (world, scratch), (belief, known), given, (part, cost[c]))
                gain[c] = (cost[0, :high] - cost[c, :high]).mean()
        keep = most if low == 0 else least
        ranked = np.argsort(-gain)
        for r in range(count):
            c = ranked[r]
            noise = (cost[0, :high] - cost[c, :high]).std() / np.sqrt(high)
            if c > 0 and not (r < keep and gain[c] + noise > 0.0):
                alive[c], gain[c] = False, -np.inf  # what is out takes no place later
        low, high = high, (min(paths, 3 * high) if 3 * high < paths else paths)
    best, gained, error = 0, 0.0, 0.0
    for c in range(1, count):
        noise = (cost[0] - cost[c]).std() / np.sqrt(paths)
        if gain[c] - z * noise > gained:
            best, gained, error = c, gain[c] - z * noise, noise
    if actions[best, 0] == NOTHING and base[0] >= 0:
        world[5][2, base[0]] = t
    return actions[best, 0], actions[best, 1], gain[best] if best else 0.0, error


@njit(cache=True, nogil=True)
def play_rule(asked, given, parts):  # type: ignore[no-untyped-def]
    """Whole days by the rule."""
    world, empty, belief = fresh(given), fresh(given), np.zeros((2, asked.shape[1] + 1))
    for d in range(asked.shape[0]):
        _copy(empty, world, 0, asked.shape[2])
        belief[:] = 0.0
        _play_one(asked[d], world, belief, given, parts[d])


@njit(cache=True, nogil=True, error_model="numpy", _nrt=False)
def _play_one(asked, world, belief, given, part):  # type: ignore[no-untyped-def]
    """One whole day by the rule."""
    age(0, world, given, part)
    go_on((0, 0, asked.shape[1]), asked, world, belief, given, part)


@njit(cache=True, nogil=True)
def play(asked, mean, setting, world, belief, given, out, part):  # type: ignore[no-untyped-def]
    """A day slot by slot, logged; ``setting`` is (first slot, to which the world is aged already, paths or 0
    for the rule, horizon, z, seed, slots until sales are known). ``out`` is (log, shelf): rows of fryer,
    product, load, slot; and (3, item, slot) left at a slot's end, asked for in vain, thrown away.
    """
    (t0, paths, horizon, z, seed, late), (log, shelf) = setting, out
    row, scratch, gone = 0, fresh(given), world[1][1]
    told = np.zeros((late + 1, 2, mean.shape[0] + 1)) + belief
    for t in range(t0, mean.shape[1]):
        if t > t0:
            shelf[2, :, t] = -gone
            age(t, world, given, part)
            shelf[2, :, t] += gone
        dreams, drawn = np.zeros((0, 1, 1), dtype=np.int64), False
        known = told[(t - t0) % (late + 1)]
        believe(known, world, given)
        for n in range(world[2].shape[1]):
            f = given[16][n]
            if world[2][0, f] > t or world[3][0, t] >= given[6][0]:
                continue
            if paths:
                if not drawn:
                    last = min(t + horizon, mean.shape[1])
                    dreams, drawn = imagine(t, last, paths, known, mean, given, seed + 1009 * t), True
                i, k, _, _ = rollout((n, t, horizon, z), dreams, world, known, given, scratch)
            else:
                i, k = rule_action(f, t, needs(t, world, given), world, given)
            if i > NOTHING and start(f, t, i, k, world, given, part):
                log[row, 0], log[row, 1], log[row, 2], log[row, 3] = f, i, k, t
                row += 1
        shelf[1, :, t] = asked[:, t] + gone
        sell(t, asked, world, belief, given, part)
        told[(t - t0) % (late + 1)] = belief
        shelf[1, :, t] -= gone
        shelf[0, :, t] = world[1][0] - gone
    shelf[2, :, -1] += world[1][0] - gone
    close(world, given, part)
