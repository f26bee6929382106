-- How fast somebody may ask. One row a bucket, by the generic cell rate algorithm (ITU-T I.371): a bucket holds `burst` tokens,
-- gets `per_minute` back, and all that has to be kept of it is the moment it will be full again.
-- A bucket's name is a keyed hash: neither addresses nor persons can be read here. Nothing is lost with the rows but a wait, so
-- they are unlogged: no write-ahead log, no copy in a backup, empty after a crash.
create unlogged table rate_window (
  bucket text primary key,
  full_at timestamptz not null,
  constraint rate_window_bucket check (length(bucket) between 1 and 64)
);
create index rate_window_full_at_idx on rate_window (full_at);

-- Nobody reads it, not even the server's role; the function below runs as the owner.
alter table rate_window enable row level security;
alter table rate_window force row level security;
create policy rate_window_take on rate_window for all to current_user using (true) with check (true);

-- Takes up to `cost` tokens. granted: how many there were; retry_after_ms: when there is one again, 0 when some were granted;
-- remaining: what is left. Old rows go as new ones come, two for one, so that a flood of buckets is gone again after a while.
create function app_take_rate(of_bucket text, cost integer, per_minute integer, burst integer,
  out granted integer, out retry_after_ms integer, out remaining integer)
language plpgsql security definer set search_path = ''
as $$
declare
  seconds_each double precision;
  full_from timestamptz;
  moment timestamptz;
  there integer;
begin
  if cost < 1 or per_minute < 1 or burst < 1 then
    raise exception 'cost, per_minute and burst begin at 1' using errcode = '22023';
  end if;
  seconds_each := 60.0 / per_minute;
  loop
    select w.full_at into full_from from public.rate_window w where w.bucket = of_bucket for update;
    exit when found;
    insert into public.rate_window (bucket, full_at) values (of_bucket, clock_timestamp()) on conflict do nothing;
    if found then
      delete from public.rate_window w where w.bucket in (
        select o.bucket from public.rate_window o where o.full_at < clock_timestamp() - interval '1 minute' and o.bucket <> of_bucket
        order by o.full_at limit 2 for update skip locked);
    end if;
  end loop;
  moment := clock_timestamp();
  full_from := greatest(full_from, moment);
  -- A millionth of a token is rounding, not a token.
  there := floor(burst - extract(epoch from full_from - moment) / seconds_each + 0.000001);
  granted := least(cost, greatest(there, 0));
  remaining := greatest(there, 0) - granted;
  if granted = 0 then
    retry_after_ms := greatest(1, ceil(1000 * (extract(epoch from full_from - moment) - (burst - 1) * seconds_each)));
  else
    retry_after_ms := 0;
    update public.rate_window w set full_at = full_from + make_interval(secs => granted * seconds_each) where w.bucket = of_bucket;
  end if;
end
$$;
revoke execute on function app_take_rate(text, integer, integer, integer) from public;
grant execute on function app_take_rate(text, integer, integer, integer) to noonpail_app;
