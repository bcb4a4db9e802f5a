-- What the owner changed about which line an account and category goes to, beside the supplied mapping. A row holds in its year, and
-- in later years where it says so, until another row. LINE names the meaning of a line; NOWHERE leaves it on no line; SUPPLIED
-- is as supplied again.
create table tax_mapping (
    tax_table varchar(40) not null,
    tax_year integer not null,
    account varchar(20) not null,
    category varchar(40) not null,
    goes varchar(10) not null,
    meaning varchar(60) not null,
    onward boolean not null,
    constraint tax_mapping_pk primary key (tax_table, tax_year, account, category),
    constraint tax_mapping_year_ck check (tax_year between 1900 and 9999),
    constraint tax_mapping_goes_ck check (goes in ('LINE', 'NOWHERE', 'SUPPLIED')),
    constraint tax_mapping_meaning_ck check ((goes = 'LINE') = (meaning <> ''))
);
