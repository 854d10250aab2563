"""The work of cost-sampling-bench.ts by numpy on one core: draws, flows by year with growth, discounting, sums, and
what is read off the samples. Times are of the
processor, not of the clock. Reads the bids as JSON from standard input, writes times and means as JSON.

Two ways are timed. "by year" makes every flow of every bid in every year, as a careful analyst would write it down.
"shared" is numpy at its best: tables of growth and discounting made once, shapes of flows shared by all bids, sums by
matrix products: the same idea as the code it is compared with."""

import json
import sys
import time

import numpy as np

asked = json.load(sys.stdin)
count, years, shared, bids = asked["samples"], asked["years"], asked["shared"], asked["bids"]
t = np.arange(years + 1)
lives = asked["lives"]


def pert(rng, low, likely, high):
    width = high - low
    first, second = 1 + 4 * (likely - low) / width, 1 + 4 * (high - likely) / width
    return low + width * rng.beta(first, second, count)


def drawn(rng):
    variation = shared["topUpPrice"]["variation"]
    square = np.log(1 + variation**2)
    mean = np.log(shared["topUpPrice"]["mean"]) - square / 2
    common = {
        "index": rng.triangular(*shared["index"], count),
        "wage": rng.triangular(*shared["wage"], count),
        "topUpPrice": rng.lognormal(mean, np.sqrt(square), count),
        "fee": pert(rng, *shared["fee"]),
        "carpetGrowth": rng.uniform(*shared["carpetGrowth"], count),
        "labourGrowth": rng.uniform(*shared["labourGrowth"], count),
        "repairGrowth": rng.uniform(*shared["repairGrowth"], count),
        "rate": rng.triangular(*shared["rate"], count),
    }
    own = [
        {
            "hours": rng.normal(bid["hours"]["mean"], bid["hours"]["deviation"], count),
            "life": rng.choice(lives, count, p=asked["lifeChances"]),
        }
        for bid in bids
    ]
    return common, own


def renewals(life):
    return [year for year in range(life, years, life)]


def by_year(rng):
    common, own = drawn(rng)
    costs = []
    growth = {name: (1 + common[name])[:, None] ** t for name in ("carpetGrowth", "labourGrowth", "repairGrowth")}
    discount = (1 + common["rate"])[:, None] ** -t.astype(float)
    for bid, mine in zip(bids, own):
        flows = np.zeros((count, years + 1))
        first = bid["carpet"] * common["index"]
        flows[:, 0] += first + bid["base"] + bid["pad"] + bid["additions"]
        renewal = first * (1 - bid["renewalSaving"])
        removal = common["fee"] * bid["area"]
        for life in lives:
            those = mine["life"] == life
            bought = renewals(life)
            for year in bought:
                flows[those, year] += (renewal + removal)[those] * growth["carpetGrowth"][those, year]
            last = bought[-1] if bought else 0
            used = (years - last) / life
            paid = renewal if bought else first
            flows[those, years] += (removal * used)[those] * growth["carpetGrowth"][those, years]
            flows[those, years] += (paid * (used - 1))[those] * growth["carpetGrowth"][those, last]
        for cost, life in ((bid["base"], bid["baseLife"]), (bid["pad"], bid["padLife"])):
            bought = renewals(life)
            for year in bought:
                flows[:, year] += cost
            last = bought[-1] if bought else 0
            flows[:, years] += cost * ((years - last) / life - 1)
        flows[:, 1:] += (mine["hours"] * common["wage"])[:, None] * growth["labourGrowth"][:, 1:]
        flows[:, 1:] += (bid["topUp"] * common["topUpPrice"])[:, None]
        flows[:, 1:] += bid["water"] + bid["test"]
        flows[:, 1:] += bid["repairs"] * growth["repairGrowth"][:, 1:]
        for year in bid["cleanYears"]:
            flows[:, year] += bid["clean"]
        costs.append((flows * discount).sum(axis=1))
    return costs


def with_shared(rng):
    common, own = drawn(rng)
    step = 1 / (1 + common["rate"])
    discount = np.empty((years + 1, count))
    discount[0] = 1
    np.multiply.accumulate(np.broadcast_to(step, (years, count)), axis=0, out=discount[1:])

    def grown(name):
        table = np.empty((years + 1, count))
        table[0] = 1
        np.multiply.accumulate(np.broadcast_to(step * (1 + common[name]), (years, count)), axis=0, out=table[1:])
        return table

    carpet, labour, repair = grown("carpetGrowth"), grown("labourGrowth"), grown("repairGrowth")
    ones = np.ones(years)
    annuity, labour_annuity, repair_annuity = ones @ discount[1:], ones @ labour[1:], ones @ repair[1:]
    carpet_plain = 1 + common["carpetGrowth"]
    renewal_at, residual_at = {}, {}
    for life in lives:
        bought = renewals(life)
        shape = np.zeros(years + 1)
        shape[bought] = 1
        renewal_at[life] = shape @ carpet
        last = bought[-1] if bought else 0
        used = (years - last) / life
        residual_at[life] = (used - 1) * discount[years] * carpet_plain**last, used * carpet[years], bool(bought)
    costs = []
    for bid, mine in zip(bids, own):
        shape = np.zeros(years + 1)
        shape[0] = bid["base"] + bid["pad"] + bid["additions"]
        for cost, life in ((bid["base"], bid["baseLife"]), (bid["pad"], bid["padLife"])):
            bought = renewals(life)
            shape[bought] += cost
            last = bought[-1] if bought else 0
            shape[years] += cost * ((years - last) / life - 1)
        shape[bid["cleanYears"]] += bid["clean"]
        shape[1:] += bid["water"] + bid["test"]
        total = shape @ discount
        first = bid["carpet"] * common["index"]
        renewal = first * (1 - bid["renewalSaving"])
        removal = common["fee"] * bid["area"]
        total += first
        for life in lives:
            those = mine["life"] == life
            left, end, bought = residual_at[life]
            total[those] += (
                (renewal + removal)[those] * renewal_at[life][those]
                + removal[those] * end[those]
                + (renewal if bought else first)[those] * left[those]
            )
        total += mine["hours"] * common["wage"] * labour_annuity
        total += bid["topUp"] * common["topUpPrice"] * annuity
        total += bid["repairs"] * repair_annuity
        costs.append(total)
    return costs


def outcome(costs):
    low, high = min(c.min() for c in costs), max(c.max() for c in costs)
    told = []
    for cost in costs:
        told.append(
            (
                cost.mean(),
                cost.std(ddof=1),
                np.percentile(cost, [5, 10, 25, 50, 75, 90, 95]),
                np.percentile(cost, np.arange(0.5, 100)),
                np.histogram(cost, bins=40, range=(low, high))[0],
            )
        )
    for one in costs:
        for other in costs:
            if one is not other:
                difference = other - one
                told.append(((difference > 0).mean(), difference.mean(), difference.std(ddof=1)))
    told.append(np.bincount(np.argmin(np.stack(costs), axis=0)))
    return told


times, means = {}, {}
for name, way in (("by year", by_year), ("shared", with_shared)):
    took = []
    for run in range(asked["runs"]):
        rng = np.random.default_rng(run)
        start = time.process_time()
        costs = way(rng)
        outcome(costs)
        took.append((time.process_time() - start) * 1000)
    times[name] = sorted(took)[len(took) // 2]
    means[name] = [float(cost.mean()) for cost in costs]
print(json.dumps({"numpy": np.__version__, "times": times, "means": means}))
