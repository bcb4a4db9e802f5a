-- Gives every foreign key an index that starts with its first column, after each migration. The embedded database makes one by itself
-- for each key; this one makes none, and looks through a whole table for whatever refers to a row: the pieces of a sale, the uses of a
-- supply, and on deleting. Keys that later migrations bring are found here too.
do $$
declare
    k record;
begin
    for k in
        select c.conrelid::regclass as of_table, a.attname as of_column, t.relname as table_name
        from pg_constraint c
        join pg_class t on t.oid = c.conrelid
        join pg_namespace n on n.oid = t.relnamespace and n.nspname = current_schema()
        join pg_attribute a on a.attrelid = c.conrelid and a.attnum = c.conkey[1]
        where c.contype = 'f'
          and not exists (select 1
                          from pg_index i
                          where i.indrelid = c.conrelid and i.indkey[0] = c.conkey[1] and i.indpred is null)
        group by c.conrelid, a.attname, t.relname
        order by 3, 2
    loop
        execute format('create index %I on %s (%I)', k.table_name || '_' || k.of_column || '_key_ix', k.of_table, k.of_column);
    end loop;
end
$$;

-- The tables of what a change touches hold a few ids, and none whenever somebody looks. Of a table that was never looked at the planner
-- thinks that it is big, and would read all postings once for it in place of the few by their index.
analyze touched_document;
analyze touched_sale;
analyze touched_offer;
analyze touched_piece;
analyze touched_supply;
