-- What a rule set would do to agreed weeks, as numbers. The administrator's own rights reach no family's row: this function reads
-- them as the owner, only for schools the person administers, and lets out nothing but counts, of which none is below five.

-- Only inside that function, and only for the owner it runs as; the server's role is another and gains nothing by the setting.
create function app_counting() returns boolean
language sql stable set search_path = ''
return coalesce(current_setting('app.counting', true), '') = 'on';
revoke execute on function app_counting() from public;

create policy lunch_box_count on lunch_box for select to current_user using (app_counting());
create policy box_item_count on box_item for select to current_user using (app_counting());
create policy week_plan_count on week_plan for select to current_user using (app_counting());
create policy enrolment_count on enrolment for select to current_user using (app_counting());
create policy child_count on child for select to current_user using (app_counting());
create policy exemption_count on exemption for select to current_user using (app_counting());

/*
  rules: [{no, rule, span, measure, sum, second, least, most, mean, counts, full_days, short, split, breaks, weekdays, from_years,
    under_years, first_day, last_day, key}], addends as columns of equal length. A row per rule, of which several bounds may have the same number, and one, with null, for all of
  them together: boxes of agreed weeks it holds for, and of them the boxes, children and weeks that would break it. A limit over a
  week that is broken counts all boxes of that child's week. not_counted: boxes with a dish that no addend knows, a family's own.
*/
create function app_count_rules(of_schools uuid[], of_class uuid, from_day date, until_day date, rule_set uuid, rules jsonb,
  sums int[], dishes text[], slots text[], fixed float8[], per_gram float8[], steps float8[], times float8[], kinds text[], known_dishes text[])
returns table (rule int, held int, boxes int, children int, weeks int, not_counted int)
language plpgsql volatile security definer set search_path = ''
-- Nothing is known of how many rows each step has, and a loop inside a loop over them is what must not be tried,
-- nor sorting what a hash can group.
set enable_nestloop = off set enable_mergejoin = off set enable_sort = off set jit = off set work_mem = '256MB'
as $$
#variable_conflict use_column
begin
  if exists (select from unnest(of_schools) s(id) where s.id not in (select public.app_appointed_school_ids())) then
    raise exception 'not a school that this person administers' using errcode = '42501';
  end if;
  perform set_config('app.counting', 'on', true);
  return query
  with r as materialized (
    select x.*, dense_rank() over (order by x.measure = 'KINDS', x.sum, x.second, x.breaks) as asks
    from jsonb_to_recordset(rules) as x(no int, rule int, span text, measure text, sum int, second int, least float8, most float8,
      mean boolean, counts boolean, full_days int, short text, split text, breaks text[], weekdays int[], from_years int,
      under_years int, first_day date, last_day date, key text)),
  -- A dish at a slot has a number, so that what follows compares whole numbers.
  kinds_of_item as materialized (select row_number() over ()::int as type, k.dish, k.slot from (
    select distinct u.dish, u.slot from unnest(dishes, slots) u(dish, slot)) k),
  h as materialized (
    select u.sum, k.type, u.fixed, u.per_gram, u.step, u.times, u.kind
    from unnest(sums, dishes, slots, fixed, per_gram, steps, times, kinds) u(sum, dish, slot, fixed, per_gram, step, times, kind)
    join kinds_of_item k on k.dish = u.dish and k.slot = u.slot),
  -- Six days on either side tell whether a week lies across the first or the last day.
  b as materialized (
    select row_number() over ()::int as box, dense_rank() over (order by l.week_plan_id, l.child_id)::int as week,
      dense_rank() over (order by l.child_id)::int as child, l.id, l.child_id, l.date,
      extract(isodow from l.date)::int as dow, extract(year from age(l.date, c.date_of_birth))::int as years, e.school_id, e.school_class_id
    from public.lunch_box l join public.week_plan p on p.id = l.week_plan_id and p.state = 'AGREED'::public.plan_state
    join public.child c on c.id = l.child_id
    join public.enrolment e on e.child_id = l.child_id and e.from_date <= l.date and (e.until_date is null or e.until_date >= l.date)
    where l.current and l.date between from_day - 6 and until_day + 6 and l.state <> 'EATEN'::public.box_state
      and e.school_id = any (of_schools) and (of_class is null or e.school_class_id = of_class)),
  -- Breaks a class has that day: an early finish drops those that begin at or after it.
  break_days as materialized (
    select d.school_class_id, d.date, array_agg(k.key) as keys from (select distinct school_id, school_class_id, date from b) d
    join public.class_break k on k.school_class_id = d.school_class_id
    where not exists (select from public.school_day x where x.school_id = d.school_id and x.date = d.date
      and (x.school_class_id is null or x.school_class_id = d.school_class_id) and x.ends_at <= k.starts_at)
    group by 1, 2),
  i as materialized (
    select b.box, row_number() over ()::int as item, i.break_key, k.type, i.grams, i.holding_case = 'REHEATED_AT_SCHOOL' as reheated,
      k.type is null and i.dish_key <> all (known_dishes) as is_own
    from b join public.box_item i on i.lunch_box_id = b.id left join kinds_of_item k on k.dish = i.dish_key and k.slot = i.slot
    where b.date between from_day and until_day),
  unknown as materialized (select distinct i.box from i where i.is_own),
  judged as materialized (
    select b.*, d.keys from b join break_days d on d.school_class_id = b.school_class_id and d.date = b.date
    where b.date between from_day and until_day and b.box not in (select box from unknown)),
  -- The boxes each rule holds for.
  held as materialized (
    select r.no, r.rule, r.asks, r.span, b.box, b.week, b.child
    from r join judged b on b.date between r.first_day and r.last_day and b.years >= r.from_years and b.years < r.under_years
      and (r.weekdays is null or b.dow = any (r.weekdays)) and (r.breaks is null or r.breaks && b.keys)
    where not exists (
      select from public.exemption x where x.child_id = b.child_id and x.rule_set_id = rule_set and x.rule_key = r.key
        and b.date between x.from_date and x.until_date)),
  -- Weeks in which the rule begins or ends.
  split_weeks as materialized (
    select distinct r.no, b.week
    from r join b on (r.weekdays is null or b.dow = any (r.weekdays)) and not b.date between r.first_day and r.last_day
    where r.span = 'WEEK'),
  -- What an item adds to what is asked, once for all rules that ask the same of the same breaks.
  asked as materialized (select distinct r.asks, r.measure, r.sum, r.second, r.breaks, r.span = 'ITEM' as of_items from r),
  addends as materialized (
    select a.asks, a.measure, a.breaks, a.of_items, h.type, h.sum = a.sum as is_first, h.kind, h.fixed, h.times, h.per_gram, h.step
    from h join asked a on a.sum = h.sum or a.second = h.sum),
  box_sums as materialized (
    select a.asks, i.box, sum(a.fixed + a.times * case when a.step > 0 then floor(a.per_gram * i.grams / a.step + 1e-9) * a.step
        else a.per_gram * i.grams end) as value, bool_or(a.is_first) as has_first, bool_or(not a.is_first) as has_second
    from i join addends a on a.type = i.type where not a.of_items and (a.breaks is null or i.break_key = any (a.breaks)) group by 1, 2),
  box_kinds as materialized (
    select distinct a.asks, i.box, a.kind from i join addends a on a.type = i.type
    where a.measure = 'KINDS' and (a.breaks is null or i.break_key = any (a.breaks))),
  box_values as materialized (
    select s.asks, s.box, case q.measure when 'TOGETHER' then (s.has_first and (s.has_second or q.second = q.sum))::int::float8
        when 'DAYS' then 1::float8 else s.value end as value
    from box_sums s join asked q on q.asks = s.asks where q.measure <> 'KINDS'
    union all
    select k.asks, k.box, count(*)::float8 from box_kinds k group by 1, 2
    union all
    select a.asks, i.box, count(*)::float8 from i, asked a
    where a.measure = 'REHEATED' and i.reheated and (a.breaks is null or i.break_key = any (a.breaks)) group by 1, 2),
  item_values as (
    select a.asks, i.box, i.item, sum(a.fixed + a.times * case when a.step > 0 then floor(a.per_gram * i.grams / a.step + 1e-9) * a.step
        else a.per_gram * i.grams end) as value
    from i join addends a on a.type = i.type where a.of_items and (a.breaks is null or i.break_key = any (a.breaks)) group by 1, 2, 3),
  broken_items as (
    select distinct h.no, h.box from item_values a join held h on h.asks = a.asks and h.box = a.box and h.span = 'ITEM' join r on r.no = h.no
    where a.value > r.most + 1e-6 * greatest(1, abs(r.most)) or a.value < r.least - 1e-6 * greatest(1, abs(r.least))),
  broken_boxes as (
    select h.no, h.box from held h join r on r.no = h.no and h.span = 'BOX' left join box_values v on v.asks = h.asks and v.box = h.box
    where coalesce(v.value, 0) > r.most + 1e-6 * greatest(1, abs(r.most))
       or coalesce(v.value, 0) < r.least - 1e-6 * greatest(1, abs(r.least))),
  week_kinds as materialized (
    select k.no, k.week, count(*)::float8 as kinds from (
      select distinct h.no, h.week, a.kind from held h join box_kinds a on a.asks = h.asks and a.box = h.box
      where h.span = 'WEEK') k group by 1, 2),
  week_sums as materialized (
    select h.no, h.week, count(*) as days, coalesce(sum(v.value), 0) as value,
      max(coalesce(v.value, 0)) as most_in_a_box, min(coalesce(v.value, 0)) as least_in_a_box
    from held h left join box_values v on v.asks = h.asks and v.box = h.box where h.span = 'WEEK' group by 1, 2),
  week_values as materialized (
    select s.no, s.week, s.days, w.no is not null as is_split, case when r.measure = 'KINDS' then coalesce(k.kinds, 0) else s.value end as value,
      s.most_in_a_box, s.least_in_a_box
    from week_sums s join r on r.no = s.no left join split_weeks w on w.no = s.no and w.week = s.week
    left join week_kinds k on k.no = s.no and k.week = s.week),
  week_limits as (
    -- The whole limit, a share of it for a part of a week, one day's share for every day, or none; of a mean the whole or none.
    select w.*, p.part, r.mean, case when r.mean and p.way <> 'SKIP' then 'WHOLE' else p.way end as way, r.least, r.most, r.counts
    from week_values w join r on r.no = w.no
    cross join lateral (
      select least(1, w.days::float8 / r.full_days) as part,
        case when w.is_split then r.split when w.days < r.full_days then r.short else 'WHOLE' end as way) p),
  week_bounds as (
    select w.no, w.week, w.way,
      case when w.mean then w.value / w.days else w.value end as value,
      w.most_in_a_box, w.least_in_a_box,
      case when w.counts then floor(w.least * s.share + 1e-9) else w.least * s.share end as least,
      case when w.counts then ceil(w.most * s.share - 1e-9) else w.most * s.share end as most
    from week_limits w cross join lateral (
      select case w.way when 'PRORATE' then w.part when 'PER_DAY' then w.part / w.days else 1 end as share) s),
  broken_weeks as (
    select w.no, w.week from week_bounds w where case w.way
      when 'SKIP' then false
      when 'PER_DAY' then w.most_in_a_box > w.most + 1e-6 * greatest(1, abs(w.most)) or w.least_in_a_box < w.least - 1e-6 * greatest(1, abs(w.least))
      else w.value > w.most + 1e-6 * greatest(1, abs(w.most)) or w.value < w.least - 1e-6 * greatest(1, abs(w.least)) end),
  broken as materialized (
    select * from broken_items union select * from broken_boxes
    union select h.no, h.box from broken_weeks w join held h on h.no = w.no and h.week = w.week),
  -- Bounds of one rule hold for the same boxes: the first stands for all.
  held_children as materialized (
    select h.rule, h.child, count(*) as boxes from held h join (select min(r.no) as no from r group by r.rule) f on f.no = h.no group by 1, 2),
  held_boxes as (select h.rule, sum(h.boxes)::bigint as held, count(*) as of_children from held_children h group by 1),
  broken_rules as materialized (select distinct r.rule, b.box, b.week, b.child from broken k join r on r.no = k.no join b on b.box = k.box),
  per_rule as (
    select o.rule, o.held, o.of_children, coalesce(k.boxes, 0) as boxes, coalesce(k.children, 0) as children, coalesce(k.weeks, 0) as weeks
    from held_boxes o left join (
      select k.rule, count(*) as boxes, count(distinct k.child) as children, count(distinct k.week) as weeks
      from broken_rules k group by 1) k on k.rule = o.rule),
  over_all as (
    select (select count(*) from (select distinct box from held) x) as held,
      (select count(*) from (select distinct child from held_children) x) as of_children, count(distinct k.box) as boxes, count(distinct k.child) as children,
      count(distinct k.week) as weeks from broken_rules k),
  counted as (
    select p.rule, p.held, p.of_children, p.boxes, p.children, p.weeks from per_rule p
    union all select null, o.held, o.of_children, o.boxes, o.children, o.weeks from over_all o)
  select c.rule,
    -- Boxes of fewer than five children are not told either: they would say how often those children packed or broke it.
    case when c.held >= 5 and c.of_children >= 5 then c.held::int end,
    case when c.boxes >= 5 and c.children >= 5 then c.boxes::int end,
    case when c.children >= 5 then c.children::int end,
    case when c.weeks >= 5 and c.children >= 5 then c.weeks::int end,
    case when u.boxes >= 5 and u.of_children >= 5 then u.boxes::int end
  from counted c cross join (
    select count(*) as boxes, count(distinct b.child) as of_children from unknown k join b on b.box = k.box) u order by c.rule nulls first;
  perform set_config('app.counting', '', true);
end
$$;
revoke execute on function app_count_rules(uuid[], uuid, date, date, uuid, jsonb, int[], text[], text[], float8[], float8[], float8[], float8[], text[], text[]) from public;
grant execute on function app_count_rules(uuid[], uuid, date, date, uuid, jsonb, int[], text[], text[], float8[], float8[], float8[], float8[], text[], text[]) to noonpail_app;
