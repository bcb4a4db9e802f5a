-- Tools that wear: whether their price is an expense at once or is spread over the uses they are thought to last.

-- AT_ONCE or BY_USE; null where it is no tool. By use, its measure "use" says which part of one a use takes.
alter table supply add column wear varchar(10);
alter table supply add constraint supply_wear_ck check (wear in ('AT_ONCE', 'BY_USE'));

-- How many uses of a tool it was; null where the supply was no tool. Such a use takes no more than there is.
alter table bench_use add column tool_uses numeric(30, 14);
alter table bench_use add constraint bench_use_tool_ck check (tool_uses > 0);

-- A tool that is an expense at once leaves the books when it is taken from the shelf (null as no: takings from before).
alter table taking add column at_once boolean;
